package icequill.rates;

import icequill.agreement.Plans;
import icequill.party.Period;
import icequill.party.Site;
import icequill.party.Timeline;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.work.Task;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;

/** All prices of the shop, each dated. */
public record RateSchedule(CurrencyUnit currency, Timeline<LaborRates> labor, Timeline<ServiceCallRates> serviceCall,
        Timeline<List<Material>> materials, Timeline<List<Task>> tasks, Timeline<Adjustments> adjustments,
        Timeline<Plans> plans, List<DatedSheet> sheets, RefrigerantRules refrigerants) {

    /** A rate sheet, and the days on which it holds. */
    public record DatedSheet(Period period, RateSheet sheet) {

        /** Whether a day and a site could have both, and neither be nearer. */
        public boolean rivals(DatedSheet other) {
            return period.overlaps(other.period)
                    && (!Collections.disjoint(sheet.sites(), other.sheet.sites())
                            || !Collections.disjoint(sheet.accounts(), other.sheet.accounts()));
        }
    }

    public RateSchedule {
        sheets = List.copyOf(sheets);
    }

    /**
     * The prices of one day for a site: over the shop's lie the sheets of its farthest account, and so on to its own.
     *
     * @param site empty where it is not known; then all are the shop's
     */
    public Validated<Rates> asOf(LocalDate day, Optional<Site> site) {
        return asOf(day).map(rates -> site.map(where -> laid(rates, day, where)).orElse(rates));
    }

    private Rates laid(Rates usual, LocalDate day, Site site) {
        Rates rates = usual;
        for (RateSheet sheet : farthestFirst(day, site)) {
            rates = new Overlay(rates, sheet).laid();
        }
        return rates;
    }

    private List<RateSheet> farthestFirst(LocalDate day, Site site) {
        return sheets.stream().filter(dated -> dated.period().contains(day)).map(DatedSheet::sheet)
                .filter(sheet -> sheet.distance(site).isPresent())
                .sorted(Comparator.comparing((RateSheet sheet) -> sheet.distance(site).orElseThrow()).reversed())
                .toList();
    }

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
                dayPlans.orElseThrow()).knowing(refrigerants));
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
