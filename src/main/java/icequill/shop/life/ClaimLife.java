package icequill.shop.life;

import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.store.DamagedRow;
import icequill.life.claim.ClaimEvent;
import icequill.life.claim.ClaimEvent.Denial;
import icequill.life.claim.ClaimEvent.Dispatch;
import icequill.life.claim.ClaimEvent.PartReturn;
import icequill.life.claim.ClaimEvent.Settlement;
import icequill.life.claim.ClaimState;
import icequill.life.claim.ClaimTerms;
import icequill.money.Amounts;
import icequill.money.Currencies;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * A claim of the book.
 *
 * @param id the visit's, and a number where the visit has several payers
 * @param site by id
 */
public record ClaimLife(String id, Optional<String> site, ClaimState state, int steps) {

    private static final String KIND = "CLAIM";
    private static final String DONE_UNDER_WARRANTY = "\"warranty\"";
    private static final String CURRENCY = "currency";
    private static final String AMOUNT = "amount";
    private static final String REASON = "reason";
    private static final String REFERENCE = "reference";
    private static final String SEND_BY = "sendBy";
    private static final String RETURN_BY = "returnBy";

    private enum Event {
        NOTED, SENT, RETURNED, PAID, REFUSED
    }

    /** The claim of an id, or that there is none. */
    public static Validated<ClaimLife> of(Reading open, String id) {
        List<LifeStep> steps = open.entries().steps(KIND, id);
        return steps.isEmpty()
                ? Validated.invalid(new Problem(Code.UNKNOWN_NAME, Place.NOWHERE, "there is no claim \"" + id + "\"",
                        "see: icequill claim list"))
                : Validated.valid(of(steps));
    }

    /** All of them, by id. */
    public static List<ClaimLife> all(Reading open) {
        return open.entries().lastSteps(KIND).keySet().stream().map(id -> of(open.entries().steps(KIND, id))).toList();
    }

    /** Those of what a visit did under a warranty. */
    public static List<ClaimLife> ofVisit(Reading open, String visit) {
        return all(open).stream().filter(life -> life.state().terms().visit().equals(visit)).toList();
    }

    /** Whether a visit was done and did something under a warranty, whether it is claimed or not. */
    public static boolean isFor(VisitEntry visit) {
        return !visit.isPlanned() && !visit.isForgotten() && visit.data().contains(DONE_UNDER_WARRANTY);
    }

    private static ClaimLife of(List<LifeStep> steps) {
        LifeStep first = steps.getFirst();
        ClaimState state = LifeStep.<ClaimState>led("claim",
                new ClaimState.Noted(terms(first), first.dated(), Optional.empty()), steps.subList(1, steps.size()),
                (before, step) -> ClaimState.step(before, event(step)));
        return new ClaimLife(first.id(), first.site(), state, steps.size());
    }

    private static ClaimTerms terms(LifeStep step) {
        return new ClaimTerms(step.text("visit").orElse(""), step.text("payer").orElse(""),
                step.text("work").orElse(""), amount(step, "listed"), amount(step, "allowed"),
                step.text("how").orElse(""), day(step, SEND_BY), day(step, RETURN_BY));
    }

    private static MonetaryAmount amount(LifeStep step, String key) {
        return DamagedRow.made(key, () -> Amounts.of(new BigDecimal(step.text(key).orElseThrow()),
                Currencies.find(step.text(CURRENCY).orElseThrow()).orElseThrow()));
    }

    private static Optional<LocalDate> day(LifeStep step, String key) {
        return step.text(key).map(text -> DamagedRow.made(key, () -> LocalDate.parse(text)));
    }

    private static ClaimEvent event(LifeStep step) {
        return switch (DamagedRow.made("event", () -> Event.valueOf(step.event()))) {
        case NOTED -> throw new DamagedRow("claim " + step.id() + " was noted twice");
        case SENT -> new Dispatch(step.dated(), step.text(REFERENCE));
        case RETURNED -> new PartReturn(step.dated());
        case PAID -> new Settlement(step.dated(), amount(step, AMOUNT));
        case REFUSED -> new Denial(step.dated(), step.text(REASON).orElse(""));
        };
    }

    /** That work is to be claimed. */
    public static LifeStep begun(String id, String site, ClaimTerms terms, LocalDate day) {
        Map<String, String> said = new HashMap<>(Map.of("visit", terms.visit(), "payer", terms.payer(), "work",
                terms.work(), "listed", Amounts.plain(terms.listed()), "allowed", Amounts.plain(terms.allowed()),
                "how", terms.how(), CURRENCY, terms.listed().getCurrency().getCurrencyCode()));
        terms.sendBy().ifPresent(last -> said.put(SEND_BY, last.toString()));
        terms.returnBy().ifPresent(last -> said.put(RETURN_BY, last.toString()));
        return new LifeStep(KIND, id, 1, Event.NOTED.name(), day, Optional.of(site), said, Map.of());
    }

    /** The day by which something is to be done: the claim sent, what failed returned; empty where nothing is. */
    public Optional<LocalDate> next() {
        return Stream.of(state.terms().sendBy().filter(last -> state instanceof ClaimState.Noted),
                state.terms().returnBy().filter(last -> state.returned().isEmpty()
                        && !(state instanceof ClaimState.Refused)))
                .flatMap(Optional::stream).min(LocalDate::compareTo);
    }

    /** What happens, as the step after the last. */
    public LifeStep next(ClaimEvent event) {
        return switch (event) {
        case Dispatch sent -> step(Event.SENT, sent.day(),
                sent.reference().map(text -> Map.of(REFERENCE, text)).orElse(Map.of()));
        case PartReturn back -> step(Event.RETURNED, back.day(), Map.of());
        case Settlement paid -> step(Event.PAID, paid.day(), Map.of(AMOUNT, Amounts.plain(paid.amount()), CURRENCY,
                paid.amount().getCurrency().getCurrencyCode()));
        case Denial no -> step(Event.REFUSED, no.day(), Map.of(REASON, no.reason()));
        };
    }

    private LifeStep step(Event what, LocalDate day, Map<String, String> said) {
        return new LifeStep(KIND, id, steps + 1, what.name(), day, site, said, Map.of());
    }
}
