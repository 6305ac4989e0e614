package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What keeps the hand from issuing wrong days, the same work twice, or what nobody meant. */
@Tag("wide")
class IssuingTest {

    /** 21:00 of 14 May in New York, and the next day in London. */
    private static final Clock EVENING = Clock.fixed(Instant.parse("2026-05-15T01:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path temporary;

    private BookShop shop = new BookShop(Path.of(""));

    @BeforeEach
    void newShop() throws IOException {
        shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
    }

    @Test
    void issue_wrongDay_isRefusedAndNoNumberIsTaken() throws IOException {
        record("late-call");

        assertThat(shop.run("invoice", "issue", "late-call", "--date", "2026-05-12").err())
                .contains("dated 2026-05-12, but visit \"late-call\" ended on 2026-05-13");
        assertThat(shop.runAt(EVENING, "invoice", "issue", "late-call", "--date", "2026-05-15").err())
                .contains("dated 2026-05-15, but today is 2026-05-14");
        assertThat(shop.runAt(EVENING, "invoice", "issue", "late-call").out()).as("today is the shop's day")
                .contains("INV-2026-00001", "due 2026-06-13");
        assertThat(
                shop.runAt(EVENING, "credit", "issue", "INV-2026-00001", "--reason", "x", "--date", "2026-05-15").err())
                .contains("dated 2026-05-15, but today is 2026-05-14");
        assertThat(shop.runAt(EVENING, "quote", "issue", "quotes/float-switch.yaml", "--date", "2026-05-15").err())
                .contains("dated 2026-05-15, but today is 2026-05-14");
        assertThat(shop.json("audit").path("papers").asInt()).isEqualTo(1);
    }

    @Test
    void visit_stillToCome_isNotRecorded() throws IOException {
        assertThat(shop.runAt(EVENING, "visit", "add", file("included-visit-hotel")).err())
                .contains("visit \"included-visit-hotel\" ends 2026-06-16T12:45, which is still to come",
                        "form: planned-visit");
        assertThat(shop.runAt(EVENING, "visit", "add", file("late-call")).status()).isZero();
    }

    @Test
    void issue_beforeTheNewestOfItsSeries_needsAReasonWhichIsKept() throws IOException {
        record("late-call");
        record("ten-minute-brushing");
        shop.json("invoice", "issue", "late-call", "--date", "2026-05-20");

        assertThat(shop.run("invoice", "issue", "ten-minute-brushing", "--date", "2026-05-19").err())
                .contains("dated 2026-05-19, but the newest invoice bears 2026-05-20", "--backdate");
        assertThat(
                shop.run("invoice", "issue", "ten-minute-brushing", "--date", "2026-05-19", "--backdate", " ").status())
                .isEqualTo(3);
        shop.json("invoice", "issue", "ten-minute-brushing", "--date", "2026-05-19", "--backdate",
                "Left lying on a desk.");

        assertThat(shop.json("show", "INV-2026-00002").path("paper").path("origin").path("backdated").asString())
                .isEqualTo("Left lying on a desk.");
        assertThat(shop.json("show", "INV-2026-00001").path("paper").path("origin").has("backdated")).isFalse();
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @Test
    void issueAll_dryRun_showsAllAndStoresNothing() throws IOException {
        record("late-call");
        record("ten-minute-brushing");
        shop.write("visits/at-the-limit.yaml", """
                format: 1
                site: pennon-wharf-taproom
                order: {limit: 149.99}
                people:
                  - {name: Sol Marrero, grade: lead, arrived: 2026-05-14T10:00, left: 2026-05-14T10:10, on: repair}
                """);
        record("at-the-limit");

        CommandsTest.Run tried = shop.run("invoice", "issue", "--all", "--dry-run");
        JsonNode json = shop.runAt(BookShop.CLOCK, "invoice", "issue", "--all", "--dry-run", "--json").json();

        assertThat(tried.out()).contains("Would issue invoice, USD 301.13, dated 2026-12-30: Pennon Wharf",
                "2 of 3 visits would be billed.").doesNotContain("INV-");
        assertThat(tried.err()).contains("above the limit of 149.99");
        assertThat(json.path("wouldIssue")).extracting(paper -> paper.path("gross").asString()).contains("301.13")
                .hasSize(2);
        assertThat(json.path("wouldIssue").get(0).has("number")).isFalse();
        assertThat(json.path("problems")).hasSize(1);
        assertThat(shop.json("audit").path("papers").asInt()).isZero();
        try (var unfinished = Files.walk(shop.folder().resolve("papers"))) {
            assertThat(unfinished.filter(Files::isRegularFile)).isEmpty();
        }
        assertThat(shop.run("invoice", "issue", "--all").out()).contains("INV-2026-00001", "INV-2026-00002",
                "2 of 3 visits billed.");
    }

    @Test
    void credit_reissueDryRun_showsBothPapers() throws IOException {
        shop.issue("late-call", "2026-05-14");

        CommandsTest.Run tried = shop.run("invoice", "reissue", "INV-2026-00001", "--purchase-order", "P-9", "--due",
                "keep", "--reason", "Wrong order.", "--date", "2026-06-01", "--dry-run");

        assertThat(tried.out()).contains("Would issue credit note, USD -301.13, dated 2026-06-01",
                "Would issue invoice, USD 301.13, dated 2026-06-01", "Nothing was issued.");
        assertThat(shop.json("audit").path("papers").asInt()).isEqualTo(1);
    }

    @Test
    void visit_copiedUnderAnotherName_isAProblemNamingTheFirst() throws IOException {
        record("late-call");
        Path copy = shop.folder().resolve("visits/late-call-copy.yaml");
        Files.copy(Path.of(file("late-call")), copy);

        assertThat(shop.problems("visit", "add", copy.toString())).singleElement().asString().contains(
                "visits/late-call-copy.yaml", "Ada Quill was at this site from 2026-05-13T16:20 to 2026-05-13T18:05",
                "visit \"late-call\" says, which is recorded already", "icequill visit withdraw late-call");
        record("late-call");
    }

    @Test
    void visit_samePersonAtTwoSites_isAProblem() throws IOException {
        record("late-call");
        String elsewhere = """
                format: 1
                site: crumb-lane-bakery
                people:
                  - {name: ada quill, grade: lead, arrived: 2026-05-13T18:04, left: 2026-05-13T18:30, on: repair}
                """;
        shop.write("visits/elsewhere.yaml", elsewhere);

        assertThat(shop.problems("visit", "add", file("elsewhere"))).singleElement().asString()
                .contains("ada quill was at site \"pennon-wharf-taproom\"", "each person at one site at a time");
        shop.write("visits/elsewhere.yaml", elsewhere.replace("18:04", "18:05"));
        record("elsewhere");
    }

    @Test
    void withdraw_unbilledVisit_isKeptAndNeverBilled() throws IOException {
        record("late-call");

        assertThat(shop.problems("visit", "withdraw", "late-call", "--reason", " ")).singleElement().asString()
                .contains("no reason is given");
        assertThat(shop.run("visit", "withdraw", "late-call", "--reason", "Copied by mistake.").out())
                .contains("Withdrawn: late-call at pennon-wharf-taproom on 2026-05-13: Copied by mistake.");

        assertThat(shop.problems("visit", "withdraw", "late-call", "--reason", "Again.").getFirst())
                .contains("was withdrawn: Copied by mistake.");
        assertThat(shop.run("invoice", "issue", "late-call").err()).contains("was withdrawn: Copied by mistake.");
        assertThat(shop.problems("visit", "add", file("late-call")).getFirst()).contains("was withdrawn");
        assertThat(shop.run("invoice", "issue", "--all").out()).contains("0 of 0 visits billed.");
        Path copy = shop.folder().resolve("visits/late-call-copy.yaml");
        Files.copy(Path.of(file("late-call")), copy);
        record("late-call-copy");
        shop.json("export", temporary.resolve("all.json").toString());
        assertThat(Files.readString(temporary.resolve("all.json"))).contains("Copied by mistake.");
        Path backup = temporary.resolve("backup.zip");
        shop.json("backup", backup.toString());
        BookShop second = BookShop.empty(temporary.resolve("second"), Database.SQLITE);
        second.json("restore", backup.toString());
        assertThat(second.run("invoice", "issue", "late-call").err()).contains("was withdrawn: Copied by mistake.");
    }

    @Test
    void withdraw_billedVisit_isRefusedUntilItsInvoiceIsGivenBack() throws IOException {
        shop.issue("late-call", "2026-05-14");

        assertThat(shop.problems("visit", "withdraw", "late-call", "--reason", "Nobody came.").getFirst())
                .contains("was billed as INV-2026-00001");
        shop.json("credit", "issue", "INV-2026-00001", "--reason", "Nobody came.", "--date", "2026-05-15");
        shop.json("visit", "withdraw", "late-call", "--reason", "Nobody came.");
    }

    /** Quarterly from 1 June 2026: payments fall due on 1 June, 1 September, 1 December and 1 March. */
    @Test
    void issueAgreement_withoutPayment_proposesTheNextAndBillsNone() throws IOException {
        List<String> line = List.of("agreement", "next", "agreements/crumb-lane-bakery.yaml", "--date",
                "2026-12-01");
        List<String> bill = List.of("invoice", "issue", "agreements/crumb-lane-bakery.yaml", "--date", "2026-12-01");

        assertThat(shop.json(line.toArray(String[]::new)).path("installment").path("number").asInt()).isEqualTo(1);
        assertThat(shop.problems(with(bill, "--installment", "2")).getFirst()).contains(
                "installment 1 of A-2026-004 comes before installment 2 and is not billed yet", "--out-of-order");
        shop.json(with(bill, "--installment", "1"));
        JsonNode next = shop.json(line.toArray(String[]::new));
        assertThat(next.path("installment").path("number").asInt()).isEqualTo(2);
        assertThat(next.path("installment").path("due").asString()).isEqualTo("2026-09-01");
        assertThat(shop.run(line.toArray(String[]::new)).out()).contains(
                "Next of A-2026-004: installment 2, due 2026-09-01",
                "--installment 2");
        shop.json(with(bill, "--installment", "3", "--out-of-order"));
        assertThat(shop.json(line.toArray(String[]::new)).path("installment").path("number").asInt()).isEqualTo(2);
        assertThat(shop.json("audit").path("papers").asInt()).isEqualTo(2);
    }

    private static String[] with(List<String> line, String... more) {
        List<String> all = new ArrayList<>(line);
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    private void record(String visit) throws IOException {
        shop.json("visit", "add", file(visit));
    }

    private String file(String visit) {
        return shop.folder().resolve("visits").resolve(visit + ".yaml").toString();
    }
}
