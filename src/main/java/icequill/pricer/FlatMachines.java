package icequill.pricer;

import icequill.agreement.FlatPrices;
import icequill.agreement.Scope;
import icequill.explain.ConstantKey;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.pricer.ResolvedVisit.Applied;
import icequill.pricer.ResolvedVisit.AtFlatPrice;
import icequill.problem.Code;
import icequill.problem.Problems;
import icequill.rates.Rates;
import icequill.work.Finding;
import icequill.work.Outcome;
import icequill.work.Visit;
import icequill.work.Visit.Named;
import java.util.List;
import java.util.Optional;

/** Finds the flat prices of a visit's machines, and reports which have none. */
record FlatMachines(Visit visit, Site site, Rates rates, Problems problems) {

    /**
     * The machines at which something was done, each with its price.
     *
     * @param named where the scope was named
     * @param modifiers of the visit
     */
    List<AtFlatPrice> at(Scope scope, Named named, List<Applied> modifiers) {
        boolean isNobodyThere = modifiers.stream().anyMatch(applied -> applied.modifier().insteadOfLabor());
        if (visit.findings().isEmpty() && !isNobodyThere) {
            problems.add(Code.NOT_ALLOWED, named.place(), "a flat price, but nothing was done at any machine",
                    "machines, or no flat price");
        }
        return visit.findings().stream().flatMap(finding -> at(scope, finding, named).stream()).toList();
    }

    /** A machine that the site does not know is reported with the rest of its finding. */
    private Optional<AtFlatPrice> at(Scope scope, Finding finding, Named named) {
        Optional<Machine> machine = site.machine(finding.machine());
        Optional<FlatPrices.Row> row = machine.flatMap(known -> rates.plans().flat().row(scope.id(), known));
        machine.filter(known -> row.isEmpty()).ifPresent(known -> problems.add(Code.MISSING, named.place(),
                "there is no flat price of \"" + scope.id() + "\" for the machine \"" + known.id() + "\", "
                        + ConstantKey.of(known.make()) + ", " + known.harvestRate().toPlainString() + " lb",
                "a further row of its make and size under flat, in the tiers of pricing/"));
        return isDeclined(finding)
                ? Optional.empty()
                : row.flatMap(price -> machine.map(known -> new AtFlatPrice(scope, price, known, outcome(finding))));
    }

    /** Whether all that was to be done at it was refused. */
    private static boolean isDeclined(Finding finding) {
        return !finding.tasks().isEmpty() && finding.tasks().stream().noneMatch(task -> task.outcome().isDone());
    }

    private static Outcome outcome(Finding finding) {
        return finding.tasks().stream().map(Finding.TaskDone::outcome).filter(Outcome::isDone).findFirst()
                .orElse(Outcome.CHARGED);
    }
}
