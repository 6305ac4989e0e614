package icequill.plans;

import icequill.agreement.Reach;
import icequill.agreement.Scope;
import icequill.party.Circumstance;
import icequill.party.Machine;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.planner.kept.KeptTimetables;
import icequill.pricer.CallReserve;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.rates.Modifier;
import icequill.rates.Rates;
import icequill.request.PlanScope;
import icequill.tax.TaxPlace;
import icequill.work.Visit;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Everything by which plans for a site are priced.
 *
 * @param whole the site with all its machines
 * @param site with those machines that are looked after
 * @param rates of the day by which plans are priced
 * @param timetables where those of the visits come from
 * @param beside what the same agreement looks after elsewhere
 */
public record PlanSetting(Shop shop, Site whole, Site site, Rates rates, TaxPlace place, PlanScope scope,
        KeptTimetables timetables, Beside beside) {

    public PlanSetting {
        rates = place.shown(rates, shop.taxBasis());
    }

    /** With the machines that the scope names, or all where it names none. */
    public static PlanSetting of(Shop shop, Site whole, Rates rates, TaxPlace place, PlanScope scope,
            KeptTimetables timetables) {
        Set<String> machines = new LinkedHashSet<>(scope.machines().isEmpty()
                ? whole.machines().stream().map(Machine::id).toList()
                : scope.machines().stream().map(Visit.Named::id).toList());
        return new PlanSetting(shop, whole, whole.only(machines), rates, place, scope, timetables,
                Beside.NOTHING);
    }

    /**
     * What of a scope its site does not have.
     *
     * @param rates empty where they are not known; then names of theirs are not looked up
     */
    public static List<Problem> problems(PlanScope scope, Site site, Optional<Rates> rates) {
        Problems problems = new Problems();
        List<String> machines = site.machines().stream().map(Machine::id).toList();
        scope.machines().forEach(named -> isKnown(named, machines, problems));
        arrivesOutside(scope, site).ifPresent(problems::add);
        rates.ifPresent(known -> unknown(scope, site, known, problems));
        return problems.list();
    }

    /** How much is looked after. */
    Reach reach() {
        return new Reach(site.machines().size() + beside.machines(), 1 + beside.sites());
    }

    /** The same for other machines of the site. */
    PlanSetting withMachines(Set<String> ids) {
        return new PlanSetting(shop, whole, whole.only(ids), rates, place, scope, timetables, beside);
    }

    /** The same where other sites are looked after too. */
    PlanSetting with(Beside other) {
        return new PlanSetting(shop, whole, site, rates, place, scope, timetables, other);
    }

    /** The same at other rates, for another term. */
    PlanSetting at(Rates others, PlanScope over) {
        return new PlanSetting(shop, whole, site, others, place, over, timetables, beside);
    }

    /** The same with what is expected of included calls. */
    PlanSetting withReserve(CallReserve reserve) {
        return new PlanSetting(shop, whole, site, rates, place, scope.withReserve(reserve), timetables, beside);
    }

    /** The same with other minutes at the site, by the id of the scope. */
    PlanSetting withMinutes(Map<String, Integer> minutes) {
        return new PlanSetting(shop, whole, site, rates, place, scope.withMinutes(minutes), timetables, beside);
    }

    /** What makes visits dearer, by the site and by what was asked. */
    List<Circumstance> circumstances() {
        return circumstances(scope, whole);
    }

    private static List<Circumstance> circumstances(PlanScope scope, Site site) {
        return Stream.concat(site.circumstances().stream(), scope.circumstances().stream()).toList();
    }

    private static Optional<Problem> arrivesOutside(PlanScope scope, Site site) {
        return site.access().filter(access -> scope.arrive().filter(arrive -> !access.contains(arrive)).isPresent())
                .map(access -> new Problem(Code.OUT_OF_RANGE, scope.place(),
                        "arrive: " + scope.arrive().orElseThrow() + ", but the site lets us in from " + access.from()
                                + " to " + access.until(),
                        "an hour within these"));
    }

    private static void unknown(PlanScope scope, Site site, Rates rates, Problems problems) {
        List<Modifier> known = rates.adjustments().modifiers();
        List<String> machines = site.machines().stream().map(Machine::id).toList();
        unknownScopes(scope.work().minutes().keySet(), scope.work().place(), rates, problems);
        for (Circumstance found : circumstances(scope, site)) {
            Optional<Modifier> modifier = known.stream().filter(one -> one.id().equals(found.modifier())).findFirst();
            if (modifier.isEmpty()) {
                problems.add(Problem.unknownName(found.place(), "modifier", found.modifier(),
                        known.stream().map(Modifier::id).toList()));
            }
            if (modifier.filter(Modifier::insteadOfLabor).isPresent()) {
                problems.add(new Problem(Code.NOT_ALLOWED, found.place(),
                        "the modifier \"" + found.modifier() + "\" is charged instead of labor",
                        "one that comes on top of a visit's work"));
            }
            found.machine().ifPresent(machine -> isKnown(new Visit.Named(machine, found.place()), machines, problems));
        }
    }

    /** Reports scopes that no visit can have. */
    static void unknownScopes(Set<String> named, Place place, Rates rates, Problems problems) {
        List<String> known = rates.plans().scopes().stream().map(Scope::id).toList();
        named.stream().filter(id -> !known.contains(id)).sorted()
                .forEach(id -> problems.add(Problem.unknownName(place, "scope", id, known)));
    }

    /** Reports a machine that the site does not have. */
    static boolean isKnown(Visit.Named machine, List<String> all, Problems problems) {
        if (!all.contains(machine.id())) {
            problems.add(Problem.unknownName(machine.place(), "machine", machine.id(), all));
        }
        return all.contains(machine.id());
    }
}
