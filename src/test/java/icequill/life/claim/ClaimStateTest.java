package icequill.life.claim;

import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.life.claim.ClaimEvent.Denial;
import icequill.life.claim.ClaimEvent.Dispatch;
import icequill.life.claim.ClaimEvent.PartReturn;
import icequill.life.claim.ClaimEvent.Settlement;
import icequill.life.claim.ClaimState.Noted;
import icequill.life.claim.ClaimState.Paid;
import icequill.life.claim.ClaimState.Refused;
import icequill.life.claim.ClaimState.Sent;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClaimStateTest {

    private static final LocalDate JUNE_2 = LocalDate.of(2026, 6, 2);
    private static final LocalDate JUNE_9 = LocalDate.of(2026, 6, 9);
    private static final LocalDate JULY_1 = LocalDate.of(2026, 7, 1);
    private static final ClaimTerms TERMS = new ClaimTerms("pump", "the maker", "Circulation pump", usd("120"),
            usd("120"), "", Optional.of(JULY_1), Optional.of(JULY_1));
    private static final Optional<LocalDate> STAYS = Optional.empty();
    private static final Optional<LocalDate> BACK = Optional.of(JUNE_9);
    private static final Noted NOTED = new Noted(TERMS, JUNE_2, STAYS);
    private static final Sent SENT = new Sent(TERMS, JUNE_9, Optional.of("RMA-118"), STAYS);
    private static final Paid PAID = new Paid(TERMS, JULY_1, usd("100"), STAYS);
    private static final Refused REFUSED = new Refused(TERMS, JULY_1, "Scale.", STAYS);
    private static final Dispatch SEND = new Dispatch(JUNE_9, Optional.of("RMA-118"));
    private static final Settlement PAY = new Settlement(JULY_1, usd("100"));
    private static final Denial REFUSE = new Denial(JULY_1, "Scale.");

    /** A state, what happens, and where it stands then; or the sentence of why it cannot. */
    record Row(ClaimState from, ClaimEvent event, Object to) {}

    static Stream<Row> table() {
        return Stream.of(new Row(NOTED, SEND, SENT),
                new Row(NOTED, new PartReturn(JUNE_9), new Noted(TERMS, JUNE_2, BACK)),
                new Row(NOTED, PAY, "the claim was not sent yet (first that it was sent)"),
                new Row(NOTED, REFUSE, "the claim was not sent yet (first that it was sent)"),
                new Row(new Noted(TERMS, JUNE_2, BACK), SEND, new Sent(TERMS, JUNE_9, Optional.of("RMA-118"), BACK)),
                new Row(SENT, PAY, PAID), new Row(SENT, REFUSE, REFUSED),
                new Row(SENT, new PartReturn(JUNE_9), new Sent(TERMS, JUNE_9, Optional.of("RMA-118"), BACK)),
                new Row(SENT, SEND, "the claim was sent on 2026-06-09 already (that it was paid or refused)"),
                new Row(SENT, new Settlement(JUNE_2, usd("100")),
                        "day: 2026-06-02 is before 2026-06-09, the day of the step before it (that day or a later one)"),
                new Row(PAID, REFUSE, "the claim was paid on 2026-07-01"),
                new Row(PAID, PAY, "the claim was paid on 2026-07-01"),
                new Row(PAID, new PartReturn(JULY_1), new Paid(TERMS, JULY_1, usd("100"), Optional.of(JULY_1))),
                new Row(REFUSED, PAY, "the claim was refused on 2026-07-01 (another claim, where there is one)"),
                new Row(REFUSED, new PartReturn(JULY_1), new Refused(TERMS, JULY_1, "Scale.", Optional.of(JULY_1))),
                new Row(new Refused(TERMS, JULY_1, "Scale.", BACK), new PartReturn(JULY_1),
                        "the failed part went back on 2026-06-09 already"));
    }

    @ParameterizedTest
    @MethodSource("table")
    void step_asTheTableSays(Row row) {
        Validated<ClaimState> after = ClaimState.step(row.from(), row.event());

        assertThat(after.found().<Object>map(state -> state)
                .orElseGet(() -> after.problems().stream().map(Problem::text).findFirst().orElseThrow()))
                .isEqualTo(row.to());
    }
}
