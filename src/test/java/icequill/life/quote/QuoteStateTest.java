package icequill.life.quote;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.life.quote.QuoteEvent.Refusal;
import icequill.life.quote.QuoteState.Accepted;
import icequill.life.quote.QuoteState.Declined;
import icequill.life.quote.QuoteState.Issued;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class QuoteStateTest {

    private static final LocalDate ISSUED = LocalDate.of(2026, 5, 14);
    private static final LocalDate LAST = LocalDate.of(2026, 6, 13);
    private static final QuoteTerms PLANS = new QuoteTerms(ISSUED, LAST, List.of("semiannual", "quarterly"));
    private static final QuoteTerms REPAIR = new QuoteTerms(ISSUED, LAST, List.of());
    private static final LocalDate MAY_20 = LocalDate.of(2026, 5, 20);

    /** A state, what happens, and where it stands then; or the sentences of why it cannot. */
    record Row(String what, QuoteState from, QuoteEvent event, Class<? extends QuoteState> to, List<String> refused) {

        static Row allowed(String what, QuoteState from, QuoteEvent event, Class<? extends QuoteState> to) {
            return new Row(what, from, event, to, List.of());
        }

        static Row refused(String what, QuoteState from, QuoteEvent event, String... sentences) {
            return new Row(what, from, event, QuoteState.class, List.of(sentences));
        }

        @Override
        public String toString() {
            return what;
        }
    }

    static Stream<Row> table() {
        Issued issued = new Issued(PLANS);
        Declined declined = new Declined(PLANS, no(MAY_20));
        Accepted accepted = new Accepted(PLANS, yes(MAY_20, "quarterly"));
        return Stream.of(
                Row.allowed("accepted on its day", issued, yes(ISSUED, "quarterly"), Accepted.class),
                Row.allowed("accepted on its last day", issued, yes(LAST, "semiannual"), Accepted.class),
                Row.allowed("accepted late, at prices that the shop holds", issued,
                        honored(LAST.plusDays(1)), Accepted.class),
                Row.allowed("a repair accepted", new Issued(REPAIR), yes(MAY_20, null), Accepted.class),
                Row.allowed("declined", issued, no(MAY_20), Declined.class),
                Row.allowed("declined after its last day", issued, no(LAST.plusDays(9)), Declined.class),
                Row.allowed("declined, then accepted", declined, yes(MAY_20.plusDays(1), "quarterly"),
                        Accepted.class),
                Row.refused("accepted before it was issued", issued, yes(ISSUED.minusDays(1), "quarterly"),
                        "day: 2026-05-13 is before 2026-05-14, on which the quote was issued (that day or a later one)"),
                Row.refused("accepted late, without a plan", issued, yes(LAST.plusDays(1), null),
                        "day: the prices held until 2026-06-13 (a day up to that, another quote, or the shop's word"
                                + " that it holds them)",
                        "plan: nothing says which plan is chosen (allowed: quarterly, semiannual)"),
                Row.refused("another plan", issued, yes(MAY_20, "monthly"),
                        "plan: there is no plan of this quote \"monthly\" (allowed: quarterly, semiannual)"),
                Row.refused("a plan of a repair", new Issued(REPAIR), yes(MAY_20, "quarterly"),
                        "plan: a plan is chosen, but the quote offers none (no plan)"),
                Row.refused("declined before it was issued", issued, no(ISSUED.minusDays(1)),
                        "day: 2026-05-13 is before 2026-05-14, on which the quote was issued (that day or a later one)"),
                Row.refused("declined twice", declined, no(MAY_20),
                        "the quote was declined on 2026-05-20 already"),
                Row.refused("accepted before it was declined", declined, yes(MAY_20.minusDays(1), "quarterly"),
                        "day: 2026-05-19 is before 2026-05-20, on which the quote was declined (that day or a later"
                                + " one)"),
                Row.refused("accepted twice", accepted, yes(MAY_20, "quarterly"),
                        "the quote was accepted on 2026-05-20 already"),
                Row.refused("declined after it was accepted", accepted, no(MAY_20),
                        "the quote was accepted on 2026-05-20 (what came of it is ended by itself)"));
    }

    @ParameterizedTest
    @MethodSource("table")
    void eachStep_leadsWhereTheTableSays(Row row) {
        Validated<QuoteState> after = QuoteState.step(row.from(), row.event());

        assertThat(after.problems()).extracting(Problem::text).containsExactlyElementsOf(row.refused());
        if (row.refused().isEmpty()) {
            assertThat(after.orElseThrow()).isInstanceOf(row.to());
            assertThat(after.orElseThrow().terms()).isEqualTo(row.from().terms());
        }
    }

    @ParameterizedTest
    @CsvSource({"2026-06-13, false", "2026-06-14, true"})
    void lapsed_isTheDayAfterTheLast(LocalDate day, boolean isLapsed) {
        assertThat(PLANS.isLapsed(day)).isEqualTo(isLapsed);
    }

    private static Acceptance yes(LocalDate day, @Nullable String plan) {
        return new Acceptance(day, Optional.ofNullable(plan), Optional.of("J. Baker"), Optional.of("owner"),
                Optional.empty(), Optional.empty(), AcceptanceWay.SIGNED, false);
    }

    private static Acceptance honored(LocalDate day) {
        return new Acceptance(day, Optional.of("quarterly"), Optional.of("J. Baker"), Optional.empty(),
                Optional.empty(), Optional.empty(), AcceptanceWay.MAIL, true);
    }

    private static Refusal no(LocalDate day) {
        return new Refusal(day, RefusalReason.PRICE, Optional.empty());
    }
}
