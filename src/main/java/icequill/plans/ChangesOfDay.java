package icequill.plans;

import icequill.agreement.Proration;
import icequill.document.ServiceAgreement;
import icequill.party.Machine;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import icequill.request.AgreementRequest.Change;
import icequill.request.AgreementRequest.Part;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/**
 * What changes of an agreement at one of its sites on a day of the term: the site comes in or goes out, some of its machines do, or something
 * changes elsewhere.
 *
 * @param before as it is without that
 * @param beside what the agreement looks after elsewhere from that day on
 */
record ChangesOfDay(AgreementAtSite before, LocalDate day, Beside beside) {

    /**
     * An agreement at a site with all that changes in its term, or what of that cannot be priced.
     *
     * @param begun as it begins
     * @param all its sites, of which this is one
     * @param site its place among them, from 0
     */
    static Validated<AgreementAtSite> through(AgreementAtSite begun, Beside.Of all, int site) {
        Validated<AgreementAtSite> hand = Validated.valid(begun);
        for (LocalDate day : all.days()) {
            if (!begun.request().isPastEnd(day)) {
                hand = hand.then(before -> new ChangesOfDay(before, day, all.on(site, day)).after());
            }
        }
        return hand.map(AgreementAtSite::settled);
    }

    /** As it is from that day on. */
    private Validated<AgreementAtSite> after() {
        AgreementRequest request = before.request();
        PlanSetting now = before.setting().with(beside);
        if (request.part().flatMap(Part::from).filter(day::equals).isPresent()) {
            return plan(now).map(coming -> before.on(now, coming))
                    .map(in -> in.with(now, change(in, in.plannedYearPrice(), names(), List.of())));
        }
        if (request.lastDayHere().filter(last -> last.plusDays(1).equals(day)).isPresent()) {
            return Validated.valid(before.with(now, change(before, before.currentYearPrice().negate(), List.of(),
                    names())));
        }
        if (!request.isHere(day)) {
            return Validated.valid(before.in(now));
        }
        return request.changes().stream().filter(own -> own.from().equals(day)).findFirst().map(this::machines)
                .orElseGet(() -> elsewhere(now));
    }

    private Validated<PricedPlan> plan(PlanSetting setting) {
        return before.pricing().of(setting, before.plan().tier());
    }

    /** What changes at other sites may give this one another discount. */
    private Validated<AgreementAtSite> elsewhere(PlanSetting now) {
        return plan(before.setting()).then(old -> plan(now).map(next -> {
            MonetaryAmount difference = next.year().price().subtract(old.year().price());
            return difference.isZero()
                    ? before.in(now)
                    : before.with(now, change(before, difference, List.of(), List.of()));
        }));
    }

    /** Another price of a year from the day on. */
    private ServiceAgreement.Change change(AgreementAtSite state, MonetaryAmount yearDifference, List<String> added,
            List<String> removed) {
        PricedPlan plan = state.plan();
        MonetaryAmount year = state.currentYearPrice();
        return new ServiceAgreement.Change(added, removed, yearDifference, Proration.of(plan.term(), day,
                plan.termPrice(year), plan.termPrice(year.add(yearDifference))), List.of(), List.of());
    }

    private List<String> names() {
        return before.setting().site().machines().stream().map(Machine::where).toList();
    }

    private Validated<AgreementAtSite> machines(Change change) {
        PlanSetting setting = before.setting();
        Problems problems = new Problems();
        Set<String> ids = moved(change, problems);
        PlanSetting.unknownScopes(change.minutes().keySet(), change.place(), setting.rates(), problems);
        // Minutes are those of one set of machines: both sides are priced by minutes that come about alike.
        Map<String, Integer> now = setting.scope().work().minutes();
        Map<String, Integer> known = change.minutes().keySet().stream().filter(now::containsKey)
                .collect(Collectors.toMap(scope -> scope, now::get));
        return problems.or(() -> setting.with(beside).withMachines(ids).withMinutes(change.minutes()))
                .then(after -> plan(setting.withMinutes(known))
                        .then(old -> plan(after).map(priced -> machines(change, after, old, priced))));
    }

    /** The machines that are looked after then, by id. */
    private Set<String> moved(Change change, Problems problems) {
        Set<String> ids = new LinkedHashSet<>(before.setting().site().machines().stream().map(Machine::id).toList());
        List<String> all = before.setting().whole().machines().stream().map(Machine::id).toList();
        for (Visit.Named added : change.added()) {
            if (PlanSetting.isKnown(added, all, problems) && !ids.add(added.id())) {
                problems.add(new Problem(Code.NOT_ALLOWED, added.place(),
                        added.id() + " is looked after already", "a machine that is not yet part of the agreement"));
            }
        }
        for (Visit.Named removed : change.removed()) {
            if (PlanSetting.isKnown(removed, all, problems) && !ids.remove(removed.id())) {
                problems.add(new Problem(Code.NOT_ALLOWED, removed.place(), removed.id() + " is not looked after",
                        "a machine that is part of the agreement"));
            }
        }
        if (ids.isEmpty()) {
            problems.add(new Problem(Code.NOT_ALLOWED, before.request().scope().place(),
                    "no machine is left on " + change.from(), before.request().part().isPresent()
                            ? "the whole site, which goes out on that day instead"
                            : "an agreement that ends on that day instead"));
        }
        return ids;
    }

    /** What the rates give with the change, less what they give without it, for the days left. */
    private AgreementAtSite machines(Change change, PlanSetting after, PricedPlan old, PricedPlan priced) {
        Proration price = Proration.of(before.plan().term(), day, old.termPrice(old.year().price()),
                priced.termPrice(priced.year().price()));
        return before.with(after, new ServiceAgreement.Change(where(change.added()), where(change.removed()),
                priced.year().price().subtract(old.year().price()), price, new ChangedMinutes(old, priced).phrases(),
                List.of())).from(day, priced);
    }

    private List<String> where(List<Visit.Named> machines) {
        return machines.stream().flatMap(named -> before.setting().whole().machine(named.id()).stream())
                .map(Machine::where).toList();
    }
}
