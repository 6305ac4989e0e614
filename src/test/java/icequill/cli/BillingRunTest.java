package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.disk.Hash;
import icequill.ledger.Database;
import icequill.office.billing.RecordOffice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** A run, whose papers are printed beside each other, held against papers that are issued one by one. */
@Tag("wide")
class BillingRunTest {

    private static final String DAY = "2026-12-30";
    /** Two of them at one site, one after the other, and one that nobody pays for. */
    private static final List<String> VISITS = List.of("late-call", "valve-repair-taproom", "goodwill-clinic",
            "ten-minute-brushing", "spring-cleaning-bakery", "found-nobody-bakery", "packs-and-discount-mercado",
            "over-midnight-hotel");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void run_issuesByteForByteWhatIsIssuedOneByOne(Database database) throws IOException {
        BookShop atOnce = BookShop.in(folder.resolve("at-once"), database);
        BookShop inTurn = BookShop.in(folder.resolve("in-turn"), database);
        for (BookShop shop : List.of(atOnce, inTurn)) {
            VISITS.forEach(visit -> shop.json("visit", "add",
                    shop.folder().resolve("visits/" + visit + ".yaml").toString()));
        }

        JsonNode due = inTurn.json("invoice", "due", "--until", DAY).path("installments");

        atOnce.json("invoice", "due", "--until", DAY, "--issue", "--date", DAY);
        atOnce.json("invoice", "issue", "--all", "--date", DAY);
        due.forEach(one -> inTurn.json("invoice", "issue", one.path("agreement").asString(), "--installment",
                one.path("number").asString(), "--date", DAY));
        RecordOffice.of(inTurn.folder(), BookShop.CLOCK).unbilled().orElseThrow()
                .forEach(visit -> inTurn.json("invoice", "issue", visit, "--date", DAY));

        Map<String, String> papers = papers(atOnce.folder());
        assertThat(papers).isEqualTo(papers(inTurn.folder())).hasSize(due.size() + VISITS.size());
        assertThat(atOnce.json("audit").path("findings")).isEmpty();
        assertThat(atOnce.json("audit").path("series")).isEqualTo(inTurn.json("audit").path("series"));
    }

    /** The hashes of their bytes, by their places within the shop. */
    private static Map<String, String> papers(Path shop) throws IOException {
        Path issued = shop.resolve("papers/issued");
        Map<String, String> papers = new TreeMap<>();
        try (Stream<Path> files = Files.walk(issued)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".pdf")).toList()) {
                papers.put(issued.relativize(file).toString(), Hash.of(Files.readAllBytes(file)));
            }
        }
        return papers;
    }
}
