package icequill.visits;

import icequill.agreement.PlannedVisit;
import icequill.agreement.Tier;
import icequill.agreement.VisitCalendar;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.rates.ClassDiscount;
import icequill.rates.Rates;
import icequill.request.AgreementRequest;
import icequill.work.Band;
import icequill.work.Finding;
import icequill.work.Outcome;
import icequill.work.Visit;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An agreement that somebody accepted and that runs on the day of a visit.
 *
 * @param tier as it was when the agreement was priced
 * @param rates by which it was priced
 * @param machines that it is for on that day, by id
 * @param calls that it includes in the year of that day; empty where it includes none
 */
public record AgreementInForce(AgreementRequest request, Tier tier, Rates rates, Set<String> machines,
        Optional<CountedCalls> calls) {

    /** A visit so many days from a planned one may be that one. */
    private static final int NEAR = 30;

    /** What is off all other work while it runs. */
    ClassDiscount discount() {
        return new ClassDiscount(tier.id(), tier.name(), tier.callDiscounts(), Optional.of(request.number()),
                tier.place());
    }

    /**
     * How soon somebody comes after a call.
     *
     * @param today the rates of the day of the call, by whose hours its band is told
     * @param machine that it is about; empty where that is not known
     * @return empty where it is about a machine that the agreement is not for, or nothing is promised for such hours
     */
    public Optional<PromisedResponse> response(ZonedDateTime called, Rates today, Optional<String> machine) {
        Band band = today.labor().week().at(called.toLocalDateTime());
        return machine.filter(id -> !machines.contains(id)).isPresent()
                ? Optional.empty()
                : Optional.ofNullable(tier.response().get(band.id())).map(
                        hours -> new PromisedResponse(number(), tier.name(), band, hours, called.plusHours(hours)));
    }

    /** Whether it is for any machine that a visit was to, or the visit was to none. */
    boolean reaches(Visit visit) {
        return visit.findings().isEmpty()
                || visit.findings().stream().map(Finding::machine).anyMatch(machines::contains);
    }

    /** That a visit charges work which a planned visit near its day includes, where it does. */
    Optional<Problem> mayBePlanned(Visit visit, Site site) {
        return VisitCalendar
                .of(request.termUntil(visit.day().plusDays(NEAR)), tier, site.season(), rates.plans().filters())
                .visits().stream().flatMap(planned -> request.due(planned).stream())
                .filter(planned -> Math.abs(ChronoUnit.DAYS.between(planned.date(), visit.day())) <= NEAR)
                .filter(planned -> charges(visit, planned)).findFirst()
                .map(planned -> new Problem(Code.NOT_ALLOWED, visit.place(),
                        "agreement " + request.number() + " has a visit due on " + planned.date()
                                + ", and this one charges work of it",
                        "outcome: included for its work, and serviceCall: included, if this is that visit"));
    }

    private boolean charges(Visit visit, PlannedVisit planned) {
        List<String> scope = planned.slot().scope().tasks();
        return visit.findings().stream().filter(finding -> machines.contains(finding.machine()))
                .flatMap(finding -> finding.tasks().stream())
                .anyMatch(done -> done.outcome() == Outcome.CHARGED && scope.contains(done.task()));
    }

    /** By which its papers know it. */
    public String number() {
        return request.number();
    }
}
