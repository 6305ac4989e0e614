package icequill.rates;

import icequill.agreement.Plans;
import icequill.party.Timeline;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.work.Task;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;

/** All prices of the shop, each dated. */
public record RateSchedule(CurrencyUnit currency, Timeline<LaborRates> labor, Timeline<ServiceCallRates> serviceCall,
        Timeline<List<Material>> materials, Timeline<List<Task>> tasks, Timeline<Adjustments> adjustments,
        Timeline<Plans> plans) {

    /** The prices of one day; a problem for each kind of price that no file covers on that day, and for each dose above its label. */
    public Validated<Rates> asOf(LocalDate day) {
        Problems problems = new Problems();
        Optional<LaborRates> dayLabor = on(day, labor, "labor", problems);
        Optional<ServiceCallRates> dayCall = on(day, serviceCall, "service-call", problems);
        Optional<List<Material>> dayMaterials = on(day, materials, "materials", problems);
        Optional<List<Task>> dayTasks = on(day, tasks, "tasks", problems);
        Optional<Adjustments> dayAdjustments = on(day, adjustments, "adjustments", problems);
        Optional<Plans> dayPlans = on(day, plans, "tiers", problems);
        dayTasks.ifPresent(found -> dayMaterials
                .ifPresent(known -> problems.addAll(DosesByLabel.problems(known, found))));
        return problems.or(() -> new Rates(currency, dayLabor.orElseThrow(), dayCall.orElseThrow(),
                dayMaterials.orElseThrow(), dayTasks.orElseThrow(), dayAdjustments.orElseThrow(),
                dayPlans.orElseThrow()));
    }

    private static <T> Optional<T> on(LocalDate day, Timeline<T> timeline, String kind, Problems problems) {
        Optional<T> value = timeline.at(day);
        if (value.isEmpty()) {
            List<String> covered = timeline.entries().stream().map(entry -> entry.period().text()).toList();
            problems.add(new Problem(Code.NO_RATES, Place.ofFile("pricing"), "no " + kind + " rates cover " + day,
                    covered.isEmpty() ? "add a file of kind " + kind : "covered: " + String.join("; ", covered)));
        }
        return value;
    }
}
