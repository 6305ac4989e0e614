package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/**
 * Calls from the outside. On Wednesday, 10 June 2026 at 9:00 in Alderton somebody of the hotel calls, whose semiannual agreement promises
 * somebody within 24 hours of calls in standard hours (pricing/tiers.yaml). One hour of a lead costs 52.00 + 98.00 there, less the
 * agreement's 10 % on repairs: 52.00 + 88.20 = 140.20.
 */
@Tag("wide")
class CallLifeCommandsTest {

    private static final Clock CALLED = at("2026-06-10T13:00:00Z");
    private static final String CALL = "hotel-fernhill-2026-06-10";

    @TempDir
    private Path folder;

    private BookShop shop = new BookShop(Path.of(""));

    private static Clock at(String moment) {
        return Clock.fixed(Instant.parse(moment), ZoneOffset.UTC);
    }

    @BeforeEach
    void make() throws IOException {
        shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        agreement(shop);
    }

    private static void agreement(BookShop shop) {
        shop.json("import", shop.folder().resolve("agreements/hotel-fernhill.yaml").toString());
    }

    private static JsonNode taken(BookShop shop, String limit) {
        Run run = shop.runAt(CALLED, "call", "take", "hotel-fernhill", "--by", "Bram", "--symptom", "No ice.",
                "--machine",
                "lobby-bar", "--since", "this morning", "--purchase-order", "FH-1", "--limit", limit, "--json");
        assertThat(run.status()).as(run.out() + run.err()).isZero();
        return run.json();
    }

    private static Path visit(BookShop shop, String id, String from, String to, String call) throws IOException {
        return shop.write("visits/" + id + ".yaml", """
                format: 1
                form: visit
                id: %s
                site: hotel-fernhill
                asked: {call: %s, by: Bram, at: 2026-06-10T09:00, symptom: No ice.}
                people: [{name: Ada Quill, grade: lead, arrived: %s, left: %s, on: repair}]
                machines: [{machine: lobby-bar, complaint: No ice., correction: Freed the float.}]
                """.formatted(id, call, from, to));
    }

    /** Taken, planned twice, done within the limit, closed; then billed. */
    @ParameterizedTest
    @EnumSource
    void call_throughItsWholeLife(Database database) throws IOException {
        BookShop book = BookShop.in(folder.resolve("other"), database);
        agreement(book);

        JsonNode taken = taken(book, "300");
        assertThat(taken.path("call").path("id").asString()).isEqualTo(CALL);
        assertThat(taken.path("call").path("response").path("promised").asString())
                .isEqualTo("2026-06-11T09:00:00-04:00");
        JsonNode promise = taken.path("atHand").path("agreements").get(0);
        assertThat(promise.path("hours").asInt()).isEqualTo(24);
        assertThat(taken.path("call").path("agreement")).isEqualTo(promise.path("agreement"));

        book.json("call", "plan", CALL, "--person", "Teo Lindqvist", "--at", "2026-06-10T15:00");
        assertThat(book.json("call", "plan", CALL, "--person", "Ada Quill", "--at", "2026-06-10T16:00").path("plan")
                .path("person").asString()).isEqualTo("Ada Quill");
        assertThat(book.json("today", "--date", "2026-06-10").path("calls").get(0).path("call").asString())
                .isEqualTo(CALL);
        book.json("visit", "add", visit(book, "answer", "2026-06-10T16:20", "2026-06-10T16:50", CALL).toString());
        JsonNode done = book.json("call", "show", CALL);
        assertThat(done.path("stage").asString()).isEqualTo("done");
        assertThat(done.path("response").path("minutes").asInt()).as("from 9:00 to 16:20").isEqualTo(440);
        assertThat(done.path("response").path("kept").asString()).isEqualTo("kept");
        assertThat(book.json("today", "--date", "2026-06-10").path("calls")).isEmpty();
        assertThat(book.json("call", "close", CALL).path("stage").asString()).isEqualTo("closed");
        assertThat(book.json("invoice", "issue", "answer", "--date", "2026-06-11").path("papers")).hasSize(1);

        JsonNode list = book.json("call", "list", "--month", "2026-06");
        assertThat(list.path("calls")).singleElement()
                .satisfies(row -> assertThat(row.path("visit").asString()).isEqualTo("answer"));
        assertThat(list.path("responses").path("kept").asInt()).isEqualTo(1);
        assertThat(book.json("call", "show", CALL).path("steps").valueStream()
                .map(step -> step.path("event").asString())).containsExactly("taken", "planned", "planned", "done",
                        "closed");
        assertThat(book.json("audit").path("findings")).isEmpty();
    }

    /** The visit comes to 140.20 before tax: above 100.00 it is billed only once somebody allows it. */
    @Test
    void visitAboveTheLimit_isNotBilledUntilSomebodyAllowsIt() throws IOException {
        taken(shop, "100");
        shop.json("visit", "add", visit(shop, "answer", "2026-06-10T16:20", "2026-06-10T16:50", CALL).toString());

        assertThat(shop.problems("invoice", "issue", "answer", "--date", "2026-06-11")).singleElement().asString()
                .contains("the price before tax is 140.20, above the limit of 100.00 that the customer set")
                .contains("record who allows more: icequill call approve " + CALL + " --by NAME --limit AMOUNT");
        assertThat(shop.problems("call", "approve", CALL, "--by", "Chef", "--limit", "100")).singleElement().asString()
                .contains("may cost 100.00 before tax already");
        JsonNode allowed = shop.json("call", "approve", CALL, "--by", "Chef", "--limit", "200", "--date", "2026-06-10");
        assertThat(allowed.path("limit").asString()).isEqualTo("200.00");
        assertThat(allowed.path("approvals").get(0).path("on").asString()).isEqualTo("2026-06-10");

        assertThat(shop.json("invoice", "issue", "answer", "--date", "2026-06-11").path("papers").get(0).path("gross")
                .asString()).as("140.20 at 8.875 %").isEqualTo("152.64");
        assertThat(shop.json("invoice", "show", "INV-2026-00001").path("paper").path("matter").path("purchaseOrder")
                .asString())
                .as("of the call").isEqualTo("FH-1");
    }

    /**
     * What was misheard is corrected, with who did it and when, until the call is closed; what was promised stays. The limit that is taken away
     * holds the bill of 140.20 up no more.
     */
    @ParameterizedTest
    @EnumSource
    void call_isCorrectedUntilItIsClosed(Database database) throws IOException {
        BookShop book = BookShop.in(folder.resolve("other"), database);
        agreement(book);
        taken(book, "100");

        JsonNode changed = book.json("call", "change", CALL, "--by", "Bram Oyelaran", "--symptom", "Small cubes.",
                "--machine", "floor-6", "--limit", "", "--approver", "Chef");

        assertThat(changed.path("caller").asString() + changed.path("symptom").asString()
                + changed.path("machine").asString() + changed.path("since").asString()
                + changed.path("approver").asString())
                .isEqualTo("Bram OyelaranSmall cubes.floor-6this morningChef");
        assertThat(changed.has("limit")).isFalse();
        assertThat(changed.path("response").path("promised").asString()).isEqualTo("2026-06-11T09:00:00-04:00");
        JsonNode step = changed.path("steps").get(1);
        assertThat(step.path("event").asString()).isEqualTo("corrected");
        assertThat(step.path("corrected")).extracting(JsonNode::asString).containsExactly("caller", "symptom",
                "machine",
                "limit", "approver");
        assertThat(book.run("call", "show", CALL).out()).contains(
                "Corrected on December 30, 2026 by " + step.path("who").asString()
                        + ": who called, what is wrong, the machine, limit, who allows it");
        assertThat(book.problems("call", "change", CALL, "--symptom", "Small cubes.")).singleElement().asString()
                .contains("nothing is changed");
        assertThat(book.problems("call", "change", CALL, "--by", "", "--machine", "none", "--limit", "dear"))
                .anyMatch(problem -> problem.contains("by: it is not said who calls"))
                .anyMatch(problem -> problem.contains("there is no machine \"none\""));
        assertThat(book.problems("call", "change", CALL, "--limit", "dear")).singleElement().asString()
                .contains("limit");
        book.json("visit", "add", visit(book, "answer", "2026-06-10T16:20", "2026-06-10T16:50", CALL).toString());
        assertThat(book.json("invoice", "issue", "answer", "--date", "2026-06-11").path("papers")).hasSize(1);
        book.json("call", "close", CALL);
        assertThat(book.problems("call", "change", CALL, "--symptom", "Noise.")).singleElement().asString()
                .contains("call \"" + CALL + "\" is closed");
        assertThat(book.json("audit").path("findings")).isEmpty();
    }

    /** A day and a half later, the second visit in time does not mend the first arrival; and a call nobody goes to is late by itself. */
    @Test
    void response_missed_isSummedUp() throws IOException {
        taken(shop, "300");
        assertThat(shop.json("call", "list").path("responses").path("missed").asInt()).as("nobody came").isEqualTo(1);
        shop.json("visit", "add", visit(shop, "answer", "2026-06-11T09:01", "2026-06-11T09:31", CALL).toString());

        JsonNode shown = shop.json("call", "show", CALL);
        assertThat(shown.path("response").path("minutes").asInt()).isEqualTo(1441);
        assertThat(shown.path("response").path("kept").asString()).isEqualTo("missed");
        assertThat(shop.run("call", "list").out()).contains("Promised responses: 0 kept, 1 missed, 0 with time left");
        assertThat(shop.run("call", "show", CALL, "--lang", "es").out())
                .contains("De la llamada a la llegada: 24", "no cumplido");
    }

    @Test
    void visit_thatIsTakenBackOrAnswersAnother_setsTheCallFree() throws IOException {
        taken(shop, "300");
        taken(shop, "300");
        shop.json("visit", "add", visit(shop, "answer", "2026-06-10T16:20", "2026-06-10T16:50", CALL).toString());
        shop.json("visit", "add",
                visit(shop, "answer", "2026-06-10T16:20", "2026-06-10T16:50", CALL + "-2").toString());
        assertThat(shop.json("call", "show", CALL).path("stage").asString()).isEqualTo("taken");
        assertThat(shop.json("call", "show", CALL + "-2").path("stage").asString()).isEqualTo("done");

        shop.json("visit", "withdraw", "answer", "--reason", "Another day.");

        assertThat(shop.json("call", "show", CALL + "-2").path("stage").asString()).isEqualTo("taken");
        assertThat(shop.json("call", "withdraw", CALL + "-2", "--reason", "It runs.").path("withdrawn").asString())
                .isEqualTo("It runs.");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @Test
    void whatIsWrongWithACall_isToldAtOnce() {
        assertThat(shop.problems("call", "take", "hotel-fernhill", "--by", "", "--symptom", "Warm.", "--machine",
                "lobby", "--at", "2027-05-20T09:00", "--limit", "-1")).hasSizeGreaterThanOrEqualTo(3)
                .anySatisfy(line -> assertThat(line).contains("lobby-bar"));
        assertThat(shop.problems("call", "take", "hotel", "--by", "Bram", "--symptom", "Warm.")).singleElement()
                .asString().contains("the book has no site \"hotel\"");
        assertThat(shop.problems("call", "show", "nothing")).singleElement().asString()
                .contains("the book has no call \"nothing\"");
        assertThat(shop.json("call", "list").path("calls")).isEmpty();
    }

    /** 152.64 of an invoice of 11 June, due after thirty days, is owed in December: it is said before anybody goes there. */
    @Test
    void hold_isSaidWhileTheCallIsTaken() throws IOException {
        taken(shop, "300");
        shop.json("visit", "add", visit(shop, "answer", "2026-06-10T16:20", "2026-06-10T16:50", CALL).toString());
        shop.json("invoice", "issue", "answer", "--date", "2026-06-11");

        JsonNode hand = shop.json("call", "take", "hotel-fernhill", "--by", "Bram", "--symptom", "Warm.")
                .path("atHand");

        assertThat(hand.path("hold").path("pastDue").asString()).isEqualTo("152.64");
        assertThat(hand.path("hold").path("invoices").asInt()).isEqualTo(1);
        assertThat(hand.path("lastVisits").get(0).path("id").asString()).isEqualTo("answer");
        assertThat(shop.run("call", "take", "hotel-fernhill", "--by", "Bram", "--symptom", "Warm.").out())
                .contains("Credit hold: Fernhill Hotels", "152.64");
    }

    /** What was said on the telephone goes with its customer; that somebody called, and when, stays. */
    @ParameterizedTest
    @EnumSource
    void forgottenCustomer_leavesCallsWithoutNames(Database database) throws IOException {
        BookShop book = BookShop.in(folder.resolve("other"), database);
        agreement(book);
        taken(book, "300");
        book.json("call", "approve", CALL, "--by", "Chef Bram", "--limit", "450");
        book.json("call", "withdraw", CALL, "--reason", "Bram found the plug.");
        book.json("customer", "forget", "fernhill-hotels", "--yes");

        JsonNode call = book.json("call", "show", CALL);
        assertThat(call.path("forgotten").asBoolean()).isTrue();
        assertThat(call.toString()).doesNotContain("Bram", "No ice", "morning");
        assertThat(call.path("at").asString()).startsWith("2026-06-10T09:00");
        assertThat(book.json("audit").path("findings")).isEmpty();
    }

    /** What the call says is not asked again. */
    @Test
    void visitNew_ofACall_asksOnlyWhatIsNotKnown() {
        taken(shop, "300");
        Run asked = Run.typing("2026-06-10\nAda Quill\n1\n16:20\n16:50\n2\n\n\n\n\n\n1\n", BookShop.CLOCK, "visit",
                "new",
                "hotel-fernhill", "--call", CALL, "--shop", shop.folder().toString());

        assertThat(asked.out()).as(asked.out()).doesNotContain("Who asked");
        assertThat(List.of(shop.json("call", "show", CALL).path("stage").asString())).as(asked.out())
                .containsExactly("done");
    }
}
