package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.answer.json.AnswerCheck;
import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A visit typed by asking, answer by answer. */
@Tag("wide")
class VisitNewTest {

    private static final String SITE = "hotel-fernhill";
    private static final String ID = SITE + "-2026-05-21";

    /** A cleaning of the lobby bar's machine by the lead, 9:00 to 10:20, with a filter. */
    private static final List<String> ANSWERS = List.of("2026-05-21", "Ana Ruiz", "1", "9:00", "10:20", "1", "",
            "FH-21200", "600", "", "1", "Scale, and cloudy ice: descaled", "", "", "h i j", "", "25", "", "", "",
            "filt",
            "", "", "", "");

    private static final String FORM = """
            format: 1
            form: visit
            id: hotel-fernhill-2026-05-21
            site: hotel-fernhill
            order:
              purchaseOrder: FH-21200
              limit: 600
            people:
              - name: Ana Ruiz
                grade: lead
                arrived: 2026-05-21T09:00
                left: 2026-05-21T10:20
                on: cleaning
            machines:
              - machine: lobby-bar
                complaint: "Scale, and cloudy ice: descaled"
                tasks:
                  - task: circulate-descaler
                  - task: flush
                  - task: sanitize
                chemicals:
                  - material: descaler
                    dose: 16
                    minutes: 25
                  - material: sanitizer
                    dose: 2
            lines:
              - material: water-filter
                amount: 1
                machine: lobby-bar
            """;

    @TempDir
    Path folder;

    private BookShop shop = new BookShop(Path.of(""));

    @BeforeEach
    void shop() throws IOException {
        shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
    }

    private Run typing(List<String> answers, String... options) {
        List<String> line = new ArrayList<>(List.of("visit", "new", SITE, "--shop", shop.folder().toString()));
        line.addAll(List.of(options));
        String typed = answers.isEmpty() ? "" : String.join("\n", answers) + "\n";
        return Run.typing(typed, BookShop.CLOCK, line.toArray(String[]::new));
    }

    private static List<String> then(List<String> answers, String... more) {
        List<String> all = new ArrayList<>(answers);
        all.addAll(List.of(more));
        return all;
    }

    private static String exported(BookShop from, Path file) throws IOException {
        Run run = from.run("export", file.toString(), ID);
        assertThat(run.status()).as(run.err()).isZero();
        return Files.readString(file);
    }

    private boolean hasVisits() {
        return shop.run("visit", "list").out().contains(ID);
    }

    /**
     * By hand: service call 52.00; 80 minutes are billed as 90, 98.00 x 1.5 = 147.00; descaler 16 x (1.37 x 1.35 = 1.8495) = 29.59;
     * sanitizer 2 x 0.85 = 1.70; filter 87.25; together 317.54. Tax 8.875 % of it is 28.18, so 345.72.
     */
    @ParameterizedTest
    @CsvSource({"en, Total before tax, On which day was the visit?, circulate, Recorded",
            "es, Total antes de impuestos, ¿Qué día fue la visita?, circular, Recorded"})
    void wholeDialogue_isPricedAndStored(String language, String net, String first, String task, String done)
            throws IOException {
        Run run = typing(then(ANSWERS, "1"), "--lang", language);

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains(first, task, done + " " + ID).containsPattern(net + " +317\\.54\n")
                .containsPattern("\\(USD\\) +345\\.72\n").contains("52.00", "147.00", "29.59", "1.70", "87.25")
                .contains("Next: icequill invoice issue " + ID);
        BookShop other = BookShop.in(folder.resolve("other"), Database.SQLITE);
        other.json("visit", "add", other.write("visits/typed.yaml", FORM).toString());
        assertThat(exported(shop, folder.resolve("typed.yaml")))
                .isEqualTo(exported(other, folder.resolve("form.yaml")));
    }

    /** The number on a part's bag is what a technician has in his hand. */
    @Test
    void part_isFoundByItsNumber() throws IOException {
        Path materials = shop.folder().resolve("pricing/materials.yaml");
        Files.writeString(materials, Files.readString(materials).replace("  - id: water-filter\n",
                "  - id: water-filter\n    partNumber: QF-4410\n"));

        Run run = typing(then(ANSWERS.stream().map(answer -> answer.equals("filt") ? "f-44" : answer).toList(), "1"));

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains("87.25", "QF-4410");
    }

    /**
     * By hand, beside the 317.54 above: stairs twice 50.00, waiting 25 min x 98.00 / 60 = 40.83, small order 20.00, and 2.5 % of
     * 52.00 + 40.83 for fuel is 2.32: 430.69; tax 38.22, so 468.91. The 147.00 of labor are 20 minutes of diagnosis with the 10 that
     * fill up the quarter, 49.00, and 60 of cleaning, 98.00.
     */
    @ParameterizedTest
    @CsvSource({"en, Anything else to tell?, small order", "es, ¿Algo más que decir?, pedido mínimo"})
    void anythingElse_isAskedByItsLetters_andPriced(String language, String more, String fee) throws IOException {
        Path adjustments = shop.folder().resolve("pricing/adjustments.yaml");
        Files.writeString(adjustments, Files.readString(adjustments)
                + "\nfees:\n  - {id: small-order, name: {en: small order, es: pedido mínimo}, class: parts, amount: 20.00}\n"
                + "  - {id: there, name: {en: there, es: ahí}, class: parts, amount: 9.00, regions: [US-CT]}\n"
                + "  - {id: each, name: {en: each, es: cada}, class: parts, amount: 0.00, always: true}\n");
        List<String> answers = new ArrayList<>(ANSWERS.subList(0, ANSWERS.size() - 1));
        answers.addAll(List.of("a b c d", "3", "9:20", "1", "", "d e", "2", "25", "a c", "freeze time", "min", "26",
                "21", "supply voltage", "V", "", "208", ""));

        Run run = typing(then(answers, "1"), "--lang", language);

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains(more, fee, "430.69", "468.91", "49.00", "98.00", "40.83")
                .doesNotContain("b  there", "b  ahí", "c  each");
        assertThat(exported(shop, folder.resolve("typed.yaml"))).contains("""
                  spent:
                  - until: 2026-05-21T09:20
                    on: diagnosis
                  - until: 2026-05-21T10:20
                    on: cleaning
                """, """
                  readings:
                  - what: freeze time
                    unit: min
                    before: "26"
                    after: "21"
                  - what: supply voltage
                    unit: V
                    after: "208"
                """, """
                - modifier: stairs
                  amount: 2
                  machine: lobby-bar
                - modifier: waiting
                  amount: 25
                fees:
                - small-order
                surcharges:
                - fuel
                """);
    }

    /** Of a machine whose plate nobody wrote down, by somebody whose certificate is on record; the call was for the condenser. */
    @ParameterizedTest
    @CsvSource({"en, which side of a machine the call was for", "es, por qué lado de una máquina fue la llamada"})
    void refrigerantAndSide_areAskedByTheirLetters(String language, String side) throws IOException {
        List<String> answers = new ArrayList<>(ANSWERS.subList(0, ANSWERS.size() - 1));
        answers.set(1, "Ada Quill");
        answers.set(6, "Mia Cole");
        answers.addAll(7, List.of("8:10", "Low on ice"));
        answers.addAll(List.of("e f", "1", "6.5", "C-12", "", "R-404A", "26", "1", "flare nut", "tightened", "1", "1",
                "bubbles", "1",
                "1"));

        Run run = typing(then(answers, "1"), "--lang", language);

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains("f  " + side);
        assertThat(exported(shop, folder.resolve("typed.yaml"))).contains("""
                  refrigerant:
                    unit: oz
                    added: 6.5
                    from: C-12
                    kind: R-404A
                    charge: 26
                    purpose: service
                    leak: flare nut
                    repair: tightened
                    test:
                      when: initial
                      tight: true
                      how: bubbles
                    technician: Ada Quill
                """, "  side: condenser\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0 | a z | letters from a to e", "2 | 8:00 | a time after 09:00, until 10:20",
            "2 | 10:30 | a time after 09:00, until 10:20", "4 | 10:20 | a time after 09:20, until 10:20"})
    void anythingElse_wrongAnswer_isAskedAgain(int place, String wrong, String right) {
        List<String> more = new ArrayList<>(List.of("a", "3", "9:20", "1", ""));
        if (place == 4) {
            // A second time that is no later than the first.
            more.add(place, "9:20");
            more.add(place + 1, "9:10");
        } else {
            more.add(place, wrong);
        }
        List<String> answers = new ArrayList<>(ANSWERS.subList(0, ANSWERS.size() - 1));
        answers.addAll(more);

        Run run = typing(then(answers, "1"));

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains(right).contains("USD 345.72 with tax");
    }

    /** Two come: the time of the second is divided; the roof is proposed, three times, as the site has it. */
    @Test
    void circumstancesOfTheSite_areProposed() throws IOException {
        Path site = shop.folder().resolve("sites/hotel-fernhill.yaml");
        Files.writeString(site, Files.readString(site) + "modifiers:\n  - modifier: roof\n    amount: 3\n");
        shop.json("import", site.toString());
        List<String> answers = List.of("2026-05-21", "Ana Ruiz, Nils Vik", "1", "2", "9:00", "10:00", "1", "", "", "",
                "",
                "", "", "1 3", "", "", "", "", "", "", "", "", "", "", "", "a b", "2", "2", "9:30", "1", "", "", "",
                "2");

        Run run = typing(then(answers, "1"));

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains("Recorded");
        assertThat(exported(shop, folder.resolve("typed.yaml"))).contains(
                "- modifier: roof\n  amount: 3\n  machine: banquet\n")
                .containsPattern("(?s)name: Nils Vik.*until: 2026-05-21T09:30\n +on: repair")
                .containsOnlyOnce("spent:");
    }

    @Test
    void back_asksAgain_andForgetsWhatWasAnswered() throws IOException {
        List<String> answers = new ArrayList<>(ANSWERS);
        // 8:00 is taken back, and two questions later the machine too, with what was said of it
        answers.addAll(3, List.of("8:00", "<"));
        answers.addAll(12, List.of("2", "<"));

        Run run = typing(then(answers, "1"));

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains("USD 345.72 with tax");
        assertThat(exported(shop, folder.resolve("typed.yaml"))).doesNotContain("08:00", "main-kitchen")
                .contains("lobby-bar");
    }

    @Test
    void back_atTheFirstQuestion_staysThere() {
        Run run = typing(List.of("<"));

        assertThat(run.out()).contains("This is the first question").containsPattern("(?s)On which day.*On which day");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0 | 21 May | Right would be: 2026-12-30",
            "0 | 2027-01-02 | a day until today, 2026-12-30", "1 | 3 | names with commas between",
            "2 | 7 | one number from 1 to 2", "3 | 9:75 | Right would be: 8:05 or 16:20",
            "4 | 8:30 | a time after 09:00",
            "8 | much | from 0 to 1000000", "10 | 1 9 | numbers from 1 to 6", "14 | h z | letters from a to n",
            "15 | 19 | at most 18 fl", "16 | soon | from 0 to 1440", "20 | fi | at least 3 letters",
            "20 | flux capacitor | No material", "22 | 1,5 | with a point before the decimals"})
    void wrongAnswer_saysWhatWouldBeRight_andIsAskedAgain(int place, String wrong, String right) {
        List<String> answers = new ArrayList<>(ANSWERS);
        answers.add(place, wrong);

        Run run = typing(then(answers, "1"));

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains(right).contains("USD 345.72 with tax");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 7, 14, 24})
    void endOfInput_storesNothing_andSaysSo(int answered) {
        Run run = typing(ANSWERS.subList(0, answered));

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.out()).endsWith("Nothing was stored.\n");
        assertThat(typing(ANSWERS.subList(0, answered), "--lang", "es").out()).endsWith("No se guardó nada.\n");
        assertThat(hasVisits()).isFalse();
    }

    @Test
    void leaving_storesNothing() {
        Run run = typing(then(ANSWERS, "4"));

        assertThat(run.status()).isZero();
        assertThat(run.out()).endsWith("Nothing was stored.\n");
        assertThat(hasVisits()).isFalse();
    }

    @Test
    void form_isWrittenAKeyALine_andNeverOverAnother() throws IOException {
        Path file = folder.resolve("typed.yaml");

        Run run = typing(ANSWERS, "--form", file.toString());

        assertThat(run.status()).as(run.out() + run.err()).isZero();
        assertThat(Files.readString(file)).doesNotContain("{", "!!")
                .contains("  complaint: 'Scale, and cloudy ice: descaled'\n", "    dose: 16\n");
        assertThat(hasVisits()).isFalse();
        assertThat(shop.json("visit", "add", file.toString()).path("gross").asString()).isEqualTo("345.72");
        String before = Files.readString(file);
        Run again = typing(ANSWERS, "--form", file.toString());
        assertThat(again.status()).isEqualTo(3);
        assertThat(again.err()).contains("the file exists already", "no form is written over a file");
        Run asked = typing(then(ANSWERS, "2", file.toString(), folder.resolve("new.yaml").toString()));
        assertThat(asked.status()).as(asked.out()).isZero();
        assertThat(asked.out()).contains("the file exists already");
        assertThat(Files.readString(file)).isEqualTo(before);
        assertThat(folder.resolve("new.yaml")).exists();
    }

    /** Those who were there before have a number, and a visit of the same day a name of its own; nothing of goodwill is charged. */
    @Test
    void secondVisit_offersWhoCameBefore() {
        typing(then(ANSWERS, "1"));
        List<String> answers = List.of("2026-05-21", "1, Nils Vik", "2", "22:30", "0:30", "2", "", "", "",
                "Imre Castell",
                "21:40", "No ice at all.", "", "5", "1 3", "", "", "", "e", "New hose; soon", "2", "", "-", "", "", "",
                "",
                "flo", "1", "2", "2", "", "");

        Run run = typing(then(answers, "1"), "--json");

        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.err()).contains("1  Ana Ruiz, lead technician", "What is Nils Vik?", "[No ice at all.]",
                "[22:30]", "[00:30]");
        assertThat(run.json().path("visit").asString()).isEqualTo(ID + "-2");
        assertThat(run.json().path("gross").asString()).isEqualTo("0.00");
    }

    /** What is asked and said goes where messages go; the answer is one document, however the conversation ended. */
    @Test
    void withJson_endsWithAnAnswer() throws IOException {
        Run ended = typing(ANSWERS, "--json");
        assertThat(ended.status()).isEqualTo(3);
        assertThat(AnswerCheck.problems("problems", ended.json())).isEmpty();
        assertThat(ended.json().path("problems")).singleElement()
                .returns("missing", problem -> problem.path("code").asString());

        Run left = typing(then(ANSWERS, "4"), "--json");
        assertThat(left.status()).isZero();
        assertThat(AnswerCheck.problems("problems", left.json())).isEmpty();
        assertThat(left.json().path("problems")).isEmpty();

        Path file = folder.resolve("typed.yaml");
        Run written = typing(ANSWERS, "--form", file.toString(), "--json");
        assertThat(written.status()).as(written.err()).isZero();
        assertThat(AnswerCheck.problems("written-form", written.json())).isEmpty();
        assertThat(written.json().path("file").asString()).isEqualTo(file.toString());

        Run inTheWay = typing(then(ANSWERS, "2", file.toString()), "--json");
        assertThat(inTheWay.status()).isEqualTo(3);
        assertThat(inTheWay.json().path("problems").valueStream().map(problem -> problem.path("code").asString()))
                .containsExactly("already-exists", "missing");
    }

    @Test
    void siteThatIsNotThere_isAProblem() {
        Run run = Run.typing("", BookShop.CLOCK, "visit", "new", "hotel-fernhil", "--shop", shop.folder().toString());

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("hotel-fernhil", "hotel-fernhill");
    }
}
