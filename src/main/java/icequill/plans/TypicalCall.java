package icequill.plans;

import icequill.pricer.PricedVisit;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Material;
import icequill.rates.Rates;
import icequill.request.CallHistory;
import icequill.work.Band;
import icequill.work.Outcome;
import icequill.work.VisitLine;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A call of the kind that a site is said to have, at list prices. */
public record TypicalCall(PlanSetting setting, CallHistory history) {

    /** Whether all that it takes is known to the rates. */
    public Validated<TypicalCall> known() {
        Problems problems = new Problems();
        history.parts().stream().filter(part -> rates().material(part.material().id()).isEmpty())
                .forEach(part -> problems.add(Problem.unknownName(part.material().place(), "material",
                        part.material().id(), rates().materials().stream().map(Material::id).toList())));
        return problems.or(() -> this);
    }

    /** In the first labor band. */
    public Validated<PricedVisit> price(LocalDate day) {
        return known().then(valid -> new HypotheticalCall(setting.shop(), setting.site(), rates()).price(day, band(),
                HypotheticalCall.Work.of(history.minutes(), history.on(), lines())));
    }

    private Band band() {
        return rates().labor().bands().getFirst();
    }

    private Rates rates() {
        return setting.rates();
    }

    private List<VisitLine> lines() {
        return history.parts().stream().<VisitLine>map(part -> new VisitLine.MaterialUsed(part.material().id(),
                part.amount(), Optional.empty(), Outcome.CHARGED, part.material().place())).toList();
    }
}
