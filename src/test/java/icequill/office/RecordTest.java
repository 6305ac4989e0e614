package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.VisitRecord;
import icequill.files.PaperJson;
import icequill.files.ShopFolder;
import icequill.money.Amounts;
import icequill.party.Language;
import icequill.pricer.PricedLine;
import icequill.problem.Problem;
import icequill.render.Printer;
import icequill.work.Quantity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records of the invented shop's visits. */
class RecordTest {

    private static final LocalDate DAY = LocalDate.of(2026, 7, 9);

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        NewShop.create(folder, true).orElseThrow();
    }

    /** Neither as text nor as data, for any visit: no amount of a line, no currency, no limit. */
    @Test
    void record_everyDemoVisit_holdsNoPrice() {
        for (Path file : ShopFolder.read(folder).visits()) {
            VisitInHand hand = hand(file);
            for (Language language : Language.values()) {
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

        List<Problem> problems = Office.of(folder).record(file, wish(Optional.empty())).problems();

        assertThat(problems).extracting(problem -> problem.code() + " " + problem.place().reference())
                .containsExactlyInAnyOrder("UNKNOWN_NAME visits/wrong.yaml:8", "UNKNOWN_NAME visits/wrong.yaml:9",
                        "OUT_OF_RANGE visits/wrong.yaml:10", "WRONG_ORDER visits/wrong.yaml:11",
                        "WRONG_ORDER visits/wrong.yaml:12");
        assertThat(problems).anyMatch(problem -> problem.text().contains("did you mean \"descaler\"?"));
    }

    @Test
    void record_number_refused() {
        assertThat(Office.of(folder).record(folder.resolve("visits/late-call.yaml"), wish(Optional.of("7"))).problems())
                .extracting(Problem::text).containsExactly("this kind of paper has no number (leave out --number)");
    }

    private VisitRecord record(String visit) {
        return new RecordAssembly(hand(folder.resolve("visits/" + visit + ".yaml")), Language.ENGLISH).record(DAY);
    }

    private VisitInHand hand(Path file) {
        return VisitInHand.of(ShopFolder.read(folder), file).orElseThrow();
    }

    private static Office.Wish wish(Optional<String> number) {
        return new Office.Wish(number, DAY, Optional.empty(), Extras.NONE);
    }
}
