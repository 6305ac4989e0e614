package icequill.office;

import icequill.agreement.Scope;
import icequill.document.PlanScope;
import icequill.files.ShopFolder;
import icequill.party.AccessHours;
import icequill.party.Circumstance;
import icequill.party.Machine;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.party.Sourcing;
import icequill.pricer.CallReserve;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.rates.Modifier;
import icequill.rates.Rates;
import icequill.tax.TaxPlace;
import icequill.work.Visit;
import java.time.LocalDate;
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
 */
record PlanSetting(Shop shop, Site whole, Site site, Rates rates, TaxPlace place, PlanScope scope) {

    /**
     * Reads what a plan is priced by; empty where something is missing, which was reported.
     *
     * @param priced the day whose rates hold
     * @param taxed the day whose tax rules hold
     * @param problems those are added here that the folder itself cannot know
     */
    static Optional<PlanSetting> read(ShopFolder folder, PlanScope scope, LocalDate priced, LocalDate taxed,
            Problems problems) {
        Optional<Site> whole = folder.site(scope.site(), scope.place());
        Optional<Set<String>> machines = whole.flatMap(site -> machines(scope, site, problems));
        Optional<Rates> rates = folder.schedule().flatMap(schedule -> problems.take(schedule.asOf(priced)));
        Optional<TaxPlace> place = whole.flatMap(site -> taxPlace(folder, site, taxed, problems));
        boolean arrives = whole.filter(site -> !arrivesOutside(scope, site, problems)).isPresent();
        boolean known = rates
                .filter(prices -> whole.filter(site -> areKnown(scope, site, prices, problems)).isPresent())
                .isPresent();
        return whole.filter(site -> arrives && known).flatMap(site -> machines.flatMap(ids -> rates
                .flatMap(prices -> place.map(taxes -> new PlanSetting(folder.shop().orElseThrow(), site,
                        site.only(ids), prices, taxes, scope)))));
    }

    /** The same for other machines of the site. */
    PlanSetting withMachines(Set<String> ids) {
        return new PlanSetting(shop, whole, whole.only(ids), rates, place, scope);
    }

    /** The same with what is expected of included calls. */
    PlanSetting withReserve(CallReserve reserve) {
        return new PlanSetting(shop, whole, site, rates, place, scope.withReserve(reserve));
    }

    /** The same with other minutes at the site, by the id of the scope. */
    PlanSetting withMinutes(Map<String, Integer> minutes) {
        return new PlanSetting(shop, whole, site, rates, place, scope.withMinutes(minutes));
    }

    /** What makes visits dearer, by the site and by what was asked. */
    List<Circumstance> circumstances() {
        return circumstances(scope, whole);
    }

    private static List<Circumstance> circumstances(PlanScope scope, Site site) {
        return Stream.concat(site.circumstances().stream(), scope.circumstances().stream()).toList();
    }

    private static boolean arrivesOutside(PlanScope scope, Site site, Problems problems) {
        Optional<AccessHours> hours = site.access().filter(access -> scope.arrive()
                .filter(arrive -> !access.contains(arrive)).isPresent());
        hours.ifPresent(access -> problems.add(new Problem(Code.OUT_OF_RANGE, scope.place(),
                "arrive: " + scope.arrive().orElseThrow() + ", but the site lets us in from " + access.from() + " to "
                        + access.until(),
                "an hour within these")));
        return hours.isPresent();
    }

    private static boolean areKnown(PlanScope scope, Site site, Rates rates, Problems problems) {
        List<Modifier> known = rates.adjustments().modifiers();
        List<String> machines = site.machines().stream().map(Machine::id).toList();
        boolean sound = areScopes(scope.work().minutes().keySet(), scope.work().place(), rates, problems);
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
            boolean atKnown = found.machine().stream()
                    .allMatch(machine -> isKnown(new Visit.Named(machine, found.place()), machines, problems));
            sound &= atKnown && modifier.filter(one -> !one.insteadOfLabor()).isPresent();
        }
        return sound;
    }

    /** Reports scopes that no visit can have. */
    static boolean areScopes(Set<String> named, Place place, Rates rates, Problems problems) {
        List<String> known = rates.plans().scopes().stream().map(Scope::id).toList();
        List<String> unknown = named.stream().filter(id -> !known.contains(id)).sorted().toList();
        unknown.forEach(id -> problems.add(Problem.unknownName(place, "scope", id, known)));
        return unknown.isEmpty();
    }

    private static Optional<Set<String>> machines(PlanScope scope, Site site, Problems problems) {
        List<String> all = site.machines().stream().map(Machine::id).toList();
        boolean known = true;
        for (Visit.Named named : scope.machines()) {
            known &= isKnown(named, all, problems);
        }
        List<String> chosen = scope.machines().isEmpty()
                ? all
                : scope.machines().stream().map(Visit.Named::id).toList();
        return known ? Optional.of(new LinkedHashSet<>(chosen)) : Optional.empty();
    }

    /** Reports a machine that the site does not have. */
    static boolean isKnown(Visit.Named machine, List<String> all, Problems problems) {
        if (!all.contains(machine.id())) {
            problems.add(Problem.unknownName(machine.place(), "machine", machine.id(), all));
        }
        return all.contains(machine.id());
    }

    /** The tax rules of the site, or of the shop where it is set so. */
    static Optional<TaxPlace> taxPlace(ShopFolder folder, Site site, LocalDate day, Problems problems) {
        Shop shop = folder.shop().orElseThrow();
        boolean atShop = shop.sourcing() == Sourcing.SHOP;
        Place asked = folder.place(atShop ? "shop.yaml" : "sites/" + site.id() + ".yaml", "taxPlace");
        return folder.taxes().flatMap(
                rules -> problems.take(rules.at(day, atShop ? shop.taxPlace() : site.taxPlace(), asked)));
    }
}
