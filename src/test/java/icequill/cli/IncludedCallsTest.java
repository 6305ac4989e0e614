package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** Calls that an agreement includes, counted down: the bakery's includes two in a year from 1 June 2026. */
@Tag("wide")
class IncludedCallsTest {

    private static final String BAKERY = "A-2026-004";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void calls_areCountedDown_andWhatIsWithdrawnOrGivenBackIsFreeAgain(Database database) throws IOException {
        BookShop shop = bakery(database);
        assertThat(calls(shop)).isEqualTo("2 [] 2");

        added(shop, "first", "2026-06-10", "included");
        added(shop, "second", "2026-07-10", "included");

        assertThat(calls(shop)).isEqualTo("2 [\"first\",\"second\"] 0");
        assertThat(shop.run("agreement", "show", BAKERY).out())
                .contains("Calls included from June 1, 2026 to May 31, 2027: 2, used 2, left 0 (first, second)");
        assertThat(shop.problems("visit", "add", visit(shop, "third", "2026-08-10", "included"))).singleElement()
                .asString().contains("included, but the calls that agreement A-2026-004 includes until 2027-05-31 are"
                        + " used: first, second");
        assertThat(how(shop, "second")).contains("included call 2 of 2 under A-2026-004");

        shop.json("visit", "withdraw", "second", "--reason", "It was another shop's.");
        assertThat(calls(shop)).isEqualTo("2 [\"first\"] 1");
        added(shop, "third", "2026-08-10", "included");
        assertThat(how(shop, "third")).contains("included call 2 of 2 under A-2026-004");

        // 87.25 of parts is charged; given back in whole, the call is free again until the visit is billed anew
        String invoice = shop.json("invoice", "issue", "first", "--date", "2026-12-30").path("papers").get(0)
                .path("number").asString();
        assertThat(calls(shop)).isEqualTo("2 [\"first\",\"third\"] 0");
        shop.json("credit", "issue", invoice, "--reason", "Billed to the wrong account.", "--date", "2026-12-30");
        assertThat(calls(shop)).isEqualTo("2 [\"third\"] 1");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** By hand: an hour of repair at 98.00 less 10 % by the agreement is 88.20; nothing is off where it is included. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void callBeyondThose_isChargedWithTheDiscount_andWhoeverChargesTooEarlyIsToldSo(Database database)
            throws IOException {
        BookShop shop = bakery(database);
        JsonNode early = shop.json("price", visit(shop, "first", "2026-06-10", "charged"));
        assertThat(early.path("notices").toString()).contains(
                "includes 2 calls until 2027-05-31, of which 2 are left, and this visit charges one");
        added(shop, "first", "2026-06-10", "included");
        added(shop, "second", "2026-07-10", "included");

        String beyond = how(shop, visit(shop, "third", "2026-08-10", "charged"));

        assertThat(beyond).contains("agreement A-2026-004, 10% off", "88.20")
                .doesNotContain("included call", "of which");
        assertThat(shop.json("call", "take", "crumb-lane-bakery", "--by", "Bram", "--symptom", "No ice.", "--at",
                "2026-12-29T10:00").path("atHand").path("agreements").get(0).path("callsLeft").asInt()).isZero();
    }

    /**
     * What the bill itself says, in its PDF: the place of a call among those included; the agreement that takes 10 % off, by hand 98.00 to 88.20;
     * and by when somebody was promised, 8 hours after a call at ten on a Thursday.
     */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void bill_saysWhichCallItIs_whatIsOff_andWhatWasPromised(Database database) throws IOException {
        BookShop shop = bakery(database);
        added(shop, "first", "2026-06-10", "included");
        added(shop, "second", "2026-07-10", "included");
        assertThat(bill(shop, "second")).contains("included call 2 of 2 under A-2026-004");

        added(shop, "third", "2026-08-10", "charged");
        assertThat(bill(shop, "third")).contains("agreement A-2026-004, 10% off", "88.20");

        JsonNode call = shop.json("call", "take", "crumb-lane-bakery", "--by", "Bram", "--symptom", "No ice.", "--at",
                "2026-10-08T10:00").path("call");
        assertThat(call.path("agreement").asString()).isEqualTo(BAKERY);
        Path form = Path.of(visit(shop, "fourth", "2026-10-08", "charged"));
        assertThat(call.toString()).contains("2026-10-08T18:00");
        Files.writeString(form, Files.readString(form).replaceFirst("asked: .*", "asked: {call: "
                + call.path("id").asString()
                + ", by: Bram, at: 2026-10-08T10:00, symptom: No ice., promised: 2026-10-08T18:00}")
                .replace("T09:00", "T11:00").replace("arrived: 2026-10-08T10:00", "arrived: 2026-10-08T11:00")
                .replace("left: 2026-10-08T10:00", "left: 2026-10-08T12:00"));
        shop.json("visit", "add", form.toString());
        assertThat(bill(shop, "fourth")).contains("Promised by October 8, 2026, 6:00");
    }

    private static String bill(BookShop shop, String visit) throws IOException {
        String file = shop.json("invoice", "issue", visit, "--date", "2026-12-30").path("papers").get(0).path("file")
                .asString();
        try (PDDocument pdf = Loader.loadPDF(Path.of(file).toFile())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    private BookShop bakery(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        Path tiers = shop.folder().resolve("pricing/tiers.yaml");
        String text = Files.readString(tiers);
        int quarterly = text.indexOf("- id: quarterly");
        Files.writeString(tiers, text.substring(0, quarterly) + text.substring(quarterly).replaceFirst(
                "    discount: 10 ", "    includedCalls: {number: 2, loading: 15}\n    discount: 10 "));
        shop.json("rates", "adopt", "--yes");
        return shop;
    }

    private static void added(BookShop shop, String id, String day, String outcome) throws IOException {
        shop.json("visit", "add", visit(shop, id, day, outcome));
    }

    /** An hour of repair, and a filter that is charged in any case. */
    private static String visit(BookShop shop, String id, String day, String outcome) throws IOException {
        return shop.write("visits/" + id + ".yaml", """
                format: 1
                form: visit
                id: %1$s
                site: crumb-lane-bakery
                asked: {by: Bram, at: %2$sT08:00, symptom: No ice.}
                serviceCall: %3$s
                people:
                  - {name: Ada Quill, grade: lead, arrived: %2$sT09:00, left: %2$sT10:00, on: repair, outcome: %3$s}
                machines:
                  - {machine: proof-room, tasks: [{task: brush-condenser, outcome: %3$s}]}
                lines:
                  - {material: water-filter, amount: 1, machine: proof-room}
                """.formatted(id, day, outcome)).toString();
    }

    private static String calls(BookShop shop) {
        JsonNode calls = shop.json("agreement", "show", BAKERY).path("sites").get(0).path("calls");
        return calls.path("included").asInt() + " " + calls.path("used") + " " + calls.path("left").asInt();
    }

    private static String how(BookShop shop, String visit) {
        return shop.run("price", visit, "--how").out().replaceAll("\\s+", " ");
    }
}
