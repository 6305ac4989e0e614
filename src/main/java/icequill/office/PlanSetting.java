package icequill.office;

import icequill.document.PlanScope;
import icequill.files.ShopFolder;
import icequill.party.Machine;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.party.Sourcing;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.rates.Rates;
import icequill.tax.TaxPlace;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
        return whole.flatMap(site -> machines.flatMap(ids -> rates
                .flatMap(prices -> place.map(taxes -> new PlanSetting(folder.shop().orElseThrow(), site,
                        site.only(ids), prices, taxes, scope)))));
    }

    /** The same for other machines of the site. */
    PlanSetting withMachines(Set<String> ids) {
        return new PlanSetting(shop, whole, whole.only(ids), rates, place, scope);
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
