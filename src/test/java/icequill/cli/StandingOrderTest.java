package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
import tools.jackson.databind.JsonNode;

/** The purchase order that stands for all of an agreement: on its paper, its payments, and its visits that name none. */
@Tag("wide")
class StandingOrderTest {

    private static final String VISIT = """
            format: 1
            site: hotel-fernhill
            people:
              - {name: Ada Quill, grade: lead, arrived: 2026-06-16T08:15, left: 2026-06-16T09:15, on: repair}
            machines:
              - {machine: floor-3, correction: Set the float.}
            """;

    @TempDir
    private Path folder;

    private BookShop shop = new BookShop(Path.of(""));
    private String agreement = "";

    @BeforeEach
    void order() throws IOException {
        shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        Path file = shop.folder().resolve("agreements/hotel-fernhill.yaml");
        Files.writeString(file, "purchaseOrder: FH-STANDING-26\n" + Files.readString(file));
        agreement = file.toString();
        shop.json("import", agreement);
    }

    @Test
    void standingOrder_onTheAgreementAndItsPayments() throws IOException {
        assertThat(html("agreement", "print", agreement)).contains("FH-STANDING-26");
        JsonNode paper = shop.json("invoice", "issue", agreement, "--installment", "1", "--date", "2026-06-01")
                .path("papers").get(0);

        assertThat(shop.json("find", "FH-STANDING-26").path("papers").get(0).path("number").asString())
                .isEqualTo(paper.path("number").asString());
        assertThat(html("invoice", "draft", agreement, "--installment", "2", "--lang", "es")).contains(
                "Orden de compra",
                "FH-STANDING-26");
    }

    @Test
    void standingOrder_onAVisitThatNamesNone() throws IOException {
        String plain = shop.write("visits/float.yaml", VISIT).toString();

        assertThat(html("invoice", "draft", plain)).contains("FH-STANDING-26");
        shop.json("visit", "add", plain);
        shop.json("invoice", "issue", "float", "--date", "2026-06-17");
        assertThat(shop.json("find", "FH-STANDING-26").path("papers")).hasSize(1);
    }

    /** One with an order of its own, and one before the term. */
    @Test
    void otherVisits_keepWhatTheySay() throws IOException {
        String own = shop.write("visits/own.yaml", VISIT + "order: {purchaseOrder: FH-1}\n").toString();
        String before = shop.write("visits/before.yaml", VISIT.replace("06-16", "05-16")).toString();

        assertThat(html("invoice", "draft", own)).contains("FH-1").doesNotContain("FH-STANDING-26");
        assertThat(html("invoice", "draft", before)).doesNotContain("FH-STANDING-26", "Purchase order");
    }

    /** From 1 September another order stands: on an installment by the day of its invoice, on a visit by its own, and on a renewal; what was issued stays. */
    @Test
    void otherOrderFromADayOn_standsForWhatFollows() throws IOException {
        String issued = shop.json("invoice", "issue", agreement, "--installment", "1", "--date", "2026-08-31")
                .path("papers").get(0).path("number").asString();

        JsonNode told = shop.json("agreement", "order", "A-2026-002", "FH-NEW-27", "--first-day", "2026-09-01",
                "--from",
                "J. Baker");

        assertThat(told.path("purchaseOrder").asString()).isEqualTo("FH-NEW-27");
        assertThat(told.path("steps").get(0).path("told").asString())
                .isEqualTo("Purchase order FH-NEW-27 stands from September 1, 2026 on, J. Baker.");
        String next = shop.json("invoice", "issue", agreement, "--installment", "2", "--date", "2026-09-01")
                .path("papers").get(0).path("number").asString();
        assertThat(shop.json("find", "FH-STANDING-26").path("papers"))
                .extracting(paper -> paper.path("number").asString())
                .containsExactly(issued);
        assertThat(shop.json("find", "FH-NEW-27").path("papers")).extracting(paper -> paper.path("number").asString())
                .containsExactly(next);
        assertThat(html("invoice", "draft", shop.write("visits/before.yaml", VISIT).toString()))
                .contains("FH-STANDING-26");
        assertThat(
                html("invoice", "draft", shop.write("visits/after.yaml", VISIT.replace("06-16", "09-16")).toString()))
                .contains("FH-NEW-27");
        shop.json("agreement", "order", "A-2026-002", "--first-day", "2026-12-01");
        assertThat(shop.json("agreement", "show", "A-2026-002").path("purchaseOrder").isMissingNode()).isTrue();
        assertThat(shop.problems("agreement", "order", "A-2026-002", "X", "--first-day", "2026-05-31")).containsExactly(
                ":0: from: it begins on 2026-06-01 (that day or a later one)");
    }

    private String html(String... args) throws IOException {
        List<String> line = new ArrayList<>(List.of(args));
        line.add("--html");
        return Files.readString(Path.of(shop.json(line.toArray(String[]::new)).path("files").get(1).asString()));
    }
}
