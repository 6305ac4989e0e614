package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.document.VisitRecord;
import icequill.files.paper.PaperJson;
import icequill.money.Amounts;
import icequill.office.billing.RecordOffice;
import icequill.papers.RecordAssembly;
import icequill.party.Language;
import icequill.pricer.PricedLine;
import icequill.problem.Problem;
import icequill.render.Printer;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import icequill.shop.VisitLoader;
import icequill.visits.VisitContext;
import icequill.work.Quantity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Records of the invented shop's visits. */
@Tag("wide")
class RecordTest {

    private static final LocalDate DAY = LocalDate.of(2026, 7, 9);

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.in(folder);
    }

    /** Neither as text nor as data, for any visit: no amount of a line, no currency, no limit. */
    @Test
    void record_everyDemoVisit_holdsNoPrice() {
        for (Path file : DemoShop.files(folder, "visits")) {
            VisitContext hand = hand(file);
            for (Language language : List.of(Language.ENGLISH, Language.SPANISH)) {
                VisitRecord record = new RecordAssembly(hand, language).record(DAY);
                String html = Printer.of(folder).html(record).orElseThrow().text();
                String body = html.substring(html.indexOf("<body>"));
                assertThat(body).as(file.toString()).doesNotContain("USD", "$");
                hand.taxed().priced().lines().stream().map(PricedLine::net).filter(net -> !net.isZero())
                        .forEach(net -> assertThat(body).doesNotContain(Amounts.plain(net)));
                assertThat(PaperJson.write(record)).doesNotContain("\"amount\"", "\"limit\"");
            }
        }
    }

    /** The doses are those of the tasks for a machine of 350 lb; the rest stands in the visit's file. */
    @Test
    void record_cleaning_saysWhichChemicalsHowMuchHowLong() {
        VisitRecord record = record("spring-cleaning-bakery");

        assertThat(record.machines().getFirst().chemicals()).extracting(chemical -> chemical.name() + " "
                + chemical.registration().orElse("-") + " " + chemical.dose().map(Quantity::number).orElseThrow() + " "
                + chemical.minutes().orElseThrow() + " " + chemical.ph().or(chemical::ppm).orElseThrow())
                .containsExactly("nickel-safe descaler - 16 22 7.1", "food-contact sanitizer DEMO-00000-1 2 10 200");
        assertThat(record.nextDue()).contains(LocalDate.of(2026, 7, 14));
        assertThat(record.safeFrom().orElseThrow()).hasToString("2026-04-14T12:30-04:00[America/New_York]");
    }

    /** What an inspector asks for: which machine of what size, what was put in, what was done; a pH to a tenth. */
    @Test
    void record_asPrinted_tellsWhatWasDone() {
        assertThat(text("spring-cleaning-bakery")).contains("Visit record spring-cleaning-bakery",
                "makes cubes in batches, cooled by air, up to 350 lb of ice in 24 h", "Water filter cartridge, 1",
                "Reason Quarterly cleaning.", "condenser brushed along its fins",
                "Food-contact sanitizer DEMO-00000-1 2 fl oz 10 min – 200",
                "Nickel-safe descaler – 16 fl oz 22 min 7.1 –").doesNotContain("brush the condenser", "Complaint");
        assertThat(text("packs-and-discount-mercado")).contains("7.0").contains("Se enjuagó tres veces");
    }

    private String text(String visit) {
        VisitContext hand = hand(folder.resolve("visits/" + visit + ".yaml"));
        VisitRecord record = new RecordAssembly(hand, hand.language(Optional.empty())).record(DAY);
        String html = Printer.of(folder).html(record).orElseThrow().text();
        return html.substring(html.indexOf("<body>")).replaceAll("<[^>]*>", " ").replace('\u00a0', ' ')
                .replaceAll("\\s+", " ");
    }

    /** Chemicals of which nothing was noted are known by the tasks' doses. */
    @Test
    void record_nothingNoted_chemicalsOfTheTasks() {
        assertThat(record("included-visit-hotel").machines()).allSatisfy(machine -> assertThat(machine.chemicals())
                .extracting(chemical -> chemical.name() + " " + chemical.dose().map(Quantity::number).orElseThrow())
                .containsExactly("nickel-safe descaler 16", "food-contact sanitizer 2"));
    }

    @Test
    void record_wrongInput_everyProblemWithItsPlace() throws Exception {
        Path file = folder.resolve("visits/wrong.yaml");
        Files.writeString(file, """
                format: 1
                site: crumb-lane-bakery
                people:
                  - {name: A, grade: lead, arrived: 2026-05-13T10:00, left: 2026-05-13T11:00, on: cleaning}
                machines:
                  - machine: proof-room
                    chemicals:
                      - {material: descalor, minutes: 20}
                      - {material: water-filter}
                      - {material: sanitizer, ph: 15}
                safeFrom: 2026-05-13T09:00
                nextDue: 2026-05-13
                """);

        List<Problem> problems = DemoShop.office(folder).record(FormName.file(file), options(Optional.empty()))
                .problems();

        assertThat(problems).extracting(problem -> problem.code() + " " + problem.place().reference())
                .containsExactlyInAnyOrder("UNKNOWN_NAME visits/wrong.yaml:8", "UNKNOWN_NAME visits/wrong.yaml:9",
                        "OUT_OF_RANGE visits/wrong.yaml:10", "WRONG_ORDER visits/wrong.yaml:11",
                        "WRONG_ORDER visits/wrong.yaml:12");
        assertThat(problems).anyMatch(problem -> problem.text().contains("did you mean \"descaler\"?"));
    }

    /**
     * The label allows 18 floz in 3 gallons, the task 20 to 25 minutes; drinking water has a pH of 6.5 and more (40 CFR 143.3), and
     * 200 ppm of chlorine may stay unrinsed (40 CFR 180.940).
     */
    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', value = {
            "ph: 7.1 | ph: 6.4 | pH 6.4 after flushing is still acid, under 6.5 | pH of 6.4: still acid | pH de 6.4: todavía ácida",
            "strip: 200 | strip: 201 | a strip of 201 ppm is above the 200 ppm that may stay unrinsed | showed 201 ppm, more than the 200 | marcó 201 ppm, más de las 200",
            "descaler, minutes | descaler, dose: 18.5, minutes | 18.5 floz is above the label's 18 | 18.5 fl oz was used, above the 18 fl oz | se usó 18.5 oz fl, más que 18 oz fl",
            "minutes: 22 | minutes: 26 | 26 minutes is above the most, 25 | left to work for 26 min, more than 25 | actuó 26 min, más de 25",
            "minutes: 22 | minutes: 19 | 19 minutes is under the least, 20 | left to work for 19 min, less than 20 | actuó 19 min, menos de 20"})
    void record_figuresThatContradictLabelsAndLimits_aProblemOrIfConfirmedARemark(String right, String wrong,
            String message, String english, String spanish) throws Exception {
        Path file = folder.resolve("visits/spring-cleaning-bakery.yaml");
        change(file, right, wrong);

        assertContradicted(file, message);

        change(file, "    recommended:", "    confirmed: Flushed three times more.\n    recommended:");
        assertThat(printed(file, Language.ENGLISH)).contains(english, "Confirmed: Flushed three times more.",
                "Ice made before", "was thrown away. Serve none before the remarks above are settled with us.")
                .doesNotContain("serve ice made after");
        assertThat(printed(file, Language.SPANISH)).contains(spanish,
                "Confirmado: Flushed three times more.", "se desechó. No sirva hielo antes de aclarar");
        assertThat(RecordOffice.of(folder, Clock.systemUTC()).record(FormName.file(file)).problems()).isEmpty();
    }

    /** Chlorine in place of the sanitizer; and its own law holds where no label says what may stay. */
    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', value = {
            "visits/spring-cleaning-bakery.yaml | ', ph: 7.1' | '' | without 3 full flushes and a pH reading between them",
            "visits/spring-cleaning-bakery.yaml | '- {task: flush}' | '- {task: sticker}' | without 3 full flushes and a pH reading between them",
            "pricing/tasks.yaml | flushes: 3 | flushes: 2 | without 3 full flushes and a pH reading between them",
            "visits/spring-cleaning-bakery.yaml | strip: 200 | strip: 200.5 | a strip of 200.5 ppm is above the 200 ppm"})
    void record_chlorine_neverVouchedForWithoutFlushesAndPh(String edited, String right, String wrong, String message)
            throws Exception {
        change(folder.resolve("pricing/materials.yaml"),
                "{chemistry: other, most: 1.5, per: gal, minutes: {least: 5}, unrinsed: 200}",
                "{chemistry: chlorine, most: 1.5, per: gal, minutes: {least: 5}}");
        Path file = folder.resolve("visits/spring-cleaning-bakery.yaml");
        assertThat(DemoShop.office(folder).record(FormName.file(file), options(Optional.empty())).problems()).isEmpty();

        change(folder.resolve(edited), right, wrong);

        assertContradicted(file, message);
    }

    @Test
    void record_doseInUnknownWater_asksForIt() throws Exception {
        Path file = folder.resolve("visits/packs-and-discount-mercado.yaml");
        change(file, "water: 7, ", "");

        assertContradicted(file,
                "the dose of descaler-bottle does not say how much water it went into (water, in gal)");
    }

    @Test
    void record_iceThrownAway_isToldAndNothingIsCalledSafe() {
        Path file = folder.resolve("visits/spring-cleaning-bakery.yaml");

        assertThat(printed(file, Language.ENGLISH))
                .containsPattern("Ice made before .*12:30.PM was thrown away; serve ice made after\\.")
                .doesNotContainIgnoringCase("safe to serve");
        assertThat(printed(file, Language.SPANISH)).contains("se desechó; sirva el hecho después.")
                .doesNotContain("Apto para servir");
    }

    private void assertContradicted(Path file, String message) {
        assertThat(DemoShop.office(folder).record(FormName.file(file), options(Optional.empty())).problems())
                .singleElement()
                .matches(problem -> problem.text().contains(message));
        assertThat(RecordOffice.of(folder, Clock.systemUTC()).record(FormName.file(file)).problems()).singleElement()
                .matches(problem -> problem.text().contains(message));
    }

    private String printed(Path file, Language language) {
        String html = Printer.of(folder).html(new RecordAssembly(hand(file), language).record(DAY)).orElseThrow()
                .text();
        return html.substring(html.indexOf("<body>")).replace("&#39;", "'").replace('\u00a0', ' ').replace('\u202f',
                ' ');
    }

    private static void change(Path file, String right, String wrong) throws Exception {
        String text = Files.readString(file);
        assertThat(text).contains(right);
        Files.writeString(file, text.replace(right, wrong));
    }

    private VisitRecord record(String visit) {
        return new RecordAssembly(hand(folder.resolve("visits/" + visit + ".yaml")), Language.ENGLISH).record(DAY);
    }

    private VisitContext hand(Path file) {
        return new VisitLoader(DemoShop.read(folder)).of(FormName.file(file)).orElseThrow();
    }

    private static PaperOptions options(Optional<String> number) {
        return new PaperOptions(number, DAY, Optional.empty(), Extras.NONE);
    }
}
