package icequill.life.call;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.explain.ConstantKey;
import icequill.life.call.CallEvent.Approval;
import icequill.life.call.CallEvent.Attended;
import icequill.life.call.CallEvent.Plan;
import icequill.problem.Place;
import icequill.problem.Validated;
import icequill.work.Call;
import icequill.work.PurchaseOrder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;
import org.javamoney.moneta.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A call of 13 May 2026, 14:20, with a limit of 300.00 and somebody promised by 14 May, 14:20. */
class CallLifeTest {

    private static final ZonedDateTime CALLED = at("2026-05-13T14:20");

    private static final Map<String, CallEvent> EVENTS = Map.ofEntries(
            Map.entry("taken", new CallEvent.Taken(call(Optional.of(money("300.00"))))),
            Map.entry("taken-without-limit", new CallEvent.Taken(call(Optional.empty()))),
            Map.entry("corrected-limit-200", new CallEvent.Corrected(call(Optional.of(money("200.00"))))),
            Map.entry("planned", plan("Ada Quill", "2026-05-13T16:00")),
            Map.entry("planned-anew", plan("Bo Frost", "2026-05-14T09:00")),
            Map.entry("planned-for-nobody", plan(" ", "2026-05-14T09:00")),
            Map.entry("planned-before-the-call", plan("Ada Quill", "2026-05-13T14:19")),
            Map.entry("allowed-450", allowed("Chef Bram", "450.00")),
            Map.entry("allowed-500", allowed("Chef Bram", "500.00")),
            Map.entry("allowed-300", allowed("Chef Bram", "300.00")),
            Map.entry("allowed-by-nobody", allowed("", "450.00")),
            Map.entry("first-visit", done("first", "2026-05-13T16:20")),
            Map.entry("first-visit-later", done("first", "2026-05-14T15:00")),
            Map.entry("second-visit", done("second", "2026-05-15T09:00")),
            Map.entry("first-visit-undone", new CallEvent.Undone("first")),
            Map.entry("second-visit-undone", new CallEvent.Undone("second")),
            Map.entry("closed", new CallEvent.Closed()),
            Map.entry("withdrawn", new CallEvent.Withdrawn("It runs again.")),
            Map.entry("withdrawn-without-reason", new CallEvent.Withdrawn(" ")));

    private static ZonedDateTime at(String local) {
        return ZonedDateTime.parse(local + ":00-04:00[America/New_York]");
    }

    private static MonetaryAmount money(String amount) {
        return Money.of(new BigDecimal(amount), "USD");
    }

    private static TakenCall call(Optional<MonetaryAmount> limit) {
        return new TakenCall("hotel-fernhill",
                new Call(Optional.of("fernhill-2026-05-13"), "Bram", CALLED, "No ice.",
                        Optional.of(CALLED.plusDays(1))),
                Optional.of("lobby-bar"),
                Optional.of("this morning"),
                new PurchaseOrder(Optional.of("FH-1"), limit, Optional.empty(), Place.NOWHERE), Optional.of("SA-7"));
    }

    private static CallEvent plan(String person, String at) {
        return new CallEvent.Planned(new Plan(person, at(at)));
    }

    private static CallEvent allowed(String by, String limit) {
        return new CallEvent.Approved(new Approval(by, money(limit), LocalDate.of(2026, 5, 13)));
    }

    private static CallEvent done(String visit, String arrived) {
        return new CallEvent.Done(new Attended(visit, at(arrived)));
    }

    /** After all of these but the last, which may be refused. */
    private static Validated<CallState> after(String events) {
        Validated<CallState> state = Validated.valid(new CallState.Unknown());
        for (String event : events.split(", ", -1)) {
            state = CallLife.step(state.orElseThrow(), Optional.ofNullable(EVENTS.get(event)).orElseThrow());
        }
        return state;
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', value = {
            "taken | Taken",
            "taken, planned | Planned Ada Quill",
            "taken, planned, planned-anew | Planned Bo Frost",
            "taken, first-visit | Done first",
            "taken, planned, first-visit | Done first",
            "taken, first-visit, first-visit-later | Done first",
            "taken, first-visit, second-visit | Done first second",
            "taken, first-visit, planned-anew | Planned Bo Frost first",
            "taken, first-visit, planned-anew, second-visit | Done first second",
            "taken, first-visit, planned-anew, closed | Closed first",
            "taken, first-visit, first-visit-undone | Taken",
            "taken, planned, first-visit, first-visit-undone | Taken",
            "taken, first-visit, second-visit, second-visit-undone | Done first",
            "taken, first-visit, planned-anew, first-visit-undone | Planned Bo Frost",
            "taken, first-visit, closed | Closed first",
            "taken, first-visit, closed, first-visit-later | Closed first",
            "taken, first-visit, closed, first-visit-undone | Taken",
            "taken, first-visit, closed, allowed-450 | Closed first 450",
            "taken, allowed-450 | Taken 450",
            "taken, allowed-450, allowed-500 | Taken 450 500",
            "taken, planned, allowed-450 | Planned Ada Quill 450",
            "taken, first-visit, allowed-450 | Done first 450",
            "taken, corrected-limit-200 | Taken",
            "taken, planned, corrected-limit-200 | Planned Ada Quill",
            "taken, first-visit, corrected-limit-200 | Done first",
            "taken, corrected-limit-200, allowed-300 | Taken 300",
            "taken, withdrawn | Withdrawn",
            "taken, planned, withdrawn | Withdrawn"})
    void step_thatThereIs(String events, String state) {
        assertThat(told(after(events).orElseThrow())).isEqualTo(state);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
            "planned | nobody called yet (first take the call)",
            "closed | nobody called yet (first take the call)",
            "taken, taken | call \"fernhill-2026-05-13\" was taken already (another id)",
            "taken, withdrawn, taken | call \"fernhill-2026-05-13\" was taken already (another id)",
            "taken, planned-for-nobody | it is not said who goes there (a name)",
            "taken, planned-before-the-call | planned for 2026-05-13T14:19, before the call at 2026-05-13T14:20 (a time after the call)",
            "taken, first-visit, closed, planned | call \"fernhill-2026-05-13\" is closed (a new call)",
            "taken, first-visit, closed, second-visit | call \"fernhill-2026-05-13\" is closed (a new call)",
            "taken, first-visit, closed, closed | call \"fernhill-2026-05-13\" is closed already",
            "corrected-limit-200 | nobody called yet (first take the call)",
            "taken, first-visit, closed, corrected-limit-200 | call \"fernhill-2026-05-13\" is closed (a new call)",
            "taken, withdrawn, corrected-limit-200 | call \"fernhill-2026-05-13\" was withdrawn: It runs again. (a new call)",
            "taken, allowed-450, corrected-limit-200 | call \"fernhill-2026-05-13\" may cost more than its limit already (who allows more than that)",
            "taken, closed | nobody went to call \"fernhill-2026-05-13\" yet (record its visit, or withdraw it with a reason)",
            "taken, planned, closed | nobody went to call \"fernhill-2026-05-13\" yet (record its visit, or withdraw it with a reason)",
            "taken, first-visit, withdrawn | call \"fernhill-2026-05-13\" was done by visit \"first\" (close it)",
            "taken, first-visit, closed, withdrawn | call \"fernhill-2026-05-13\" was done by visit \"first\" (close it)",
            "taken, first-visit, planned-anew, withdrawn | call \"fernhill-2026-05-13\" was done by visit \"first\" (close it)",
            "taken, withdrawn-without-reason | no reason is given (a reason, which the book keeps)",
            "taken, withdrawn, planned | call \"fernhill-2026-05-13\" was withdrawn: It runs again. (a new call)",
            "taken, withdrawn, allowed-450 | call \"fernhill-2026-05-13\" was withdrawn: It runs again. (a new call)",
            "taken, withdrawn, first-visit | call \"fernhill-2026-05-13\" was withdrawn: It runs again. (a new call)",
            "taken, withdrawn, closed | call \"fernhill-2026-05-13\" was withdrawn: It runs again. (a new call)",
            "taken, first-visit, second-visit-undone | visit \"second\" is not one to call \"fernhill-2026-05-13\" (a visit to it)",
            "taken-without-limit, allowed-450 | call \"fernhill-2026-05-13\" has no limit (nobody has to allow more)",
            "taken, allowed-by-nobody | it is not said who allows it (a name)",
            "taken, allowed-300 | call \"fernhill-2026-05-13\" may cost 300.00 before tax already (more than that)",
            "taken, allowed-500, allowed-450 | call \"fernhill-2026-05-13\" may cost 500.00 before tax already (more than that)"})
    void step_thatThereIsNot_saysWhy(String events, String sentence) {
        assertThat(after(events).problems()).singleElement().satisfies(why -> assertThat(why.text())
                .isEqualTo(sentence));
    }

    private static String told(CallState state) {
        CallState.Known known = (CallState.Known) state;
        String plan = state instanceof CallState.Planned(CallRecord record, Plan next) ? " " + next.person() : "";
        StringBuilder text = new StringBuilder(state.getClass().getSimpleName() + plan);
        known.known().visits().forEach(visit -> text.append(' ').append(visit.visit()));
        known.known().approvals().forEach(more -> text.append(' ').append(more.limit().getNumber().intValueExact()));
        return text.toString();
    }

    /** The last one who allowed more, and how much; the number of the order stays. */
    @Test
    void order_isAsItWasAllowedLast() {
        PurchaseOrder order = ((CallState.Known) after("taken, allowed-450, allowed-500").orElseThrow()).known()
                .order();

        assertThat(List.of(order.purchaseOrder().orElseThrow(), order.limit().orElseThrow().toString(),
                order.approver().orElseThrow())).containsExactly("FH-1", "USD 500", "Chef Bram");
    }

    /** Promised by 14:20 of the next day: that minute is still in time, the next is not. */
    @ParameterizedTest(name = "arrived {0}, seen at {1}: {2}")
    @CsvSource({"2026-05-13T16:20, 2026-05-20T12:00, kept, PT2H", "2026-05-14T14:20, 2026-05-20T12:00, kept, PT24H",
            "2026-05-14T14:21, 2026-05-20T12:00, missed, PT24H1M", "2026-05-13T14:00, 2026-05-20T12:00, kept, PT0S",
            ", 2026-05-14T14:20, waiting, ", ", 2026-05-14T14:21, missed, "})
    void response_keptOrMissed(String arrived, String now, String kept, String took) {
        Response response = new Response(CALLED, Optional.of(CALLED.plusDays(1)),
                Optional.ofNullable(arrived).map(CallLifeTest::at));

        assertThat(ConstantKey.of(response.at(at(now)))).isEqualTo(kept);
        assertThat(response.took().map(Object::toString)).isEqualTo(Optional.ofNullable(took));
    }

    /** The first to arrive answers the call, in whatever order the visits were recorded. */
    @Test
    void response_isOfTheFirstArrival() {
        CallRecord known = ((CallState.Known) after("taken, second-visit, first-visit").orElseThrow()).known();

        assertThat(known.response().arrived()).contains(at("2026-05-13T16:20"));
        assertThat(new Response(CALLED, Optional.empty(), Optional.of(CALLED)).at(CALLED))
                .isEqualTo(Response.Kept.NOT_PROMISED);
    }
}
