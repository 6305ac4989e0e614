package icequill.outlook;

import icequill.document.BrushingSheet.Comparison;
import icequill.document.BrushingSheet.Electricity;
import icequill.document.BrushingSheet.Savings;
import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.MaintenancePolicy;
import icequill.forecast.MeanDirt;
import icequill.forecast.effects.CondensingRise;
import icequill.forecast.effects.SourcedAmount;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.SiteHistory;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.MachineRisk;
import icequill.money.Amounts;
import icequill.money.MinorUnits;
import icequill.money.Stepping;
import icequill.party.Machine;
import icequill.plans.ExpectedCharges;
import icequill.plans.SiteRisks;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/**
 * What a customer may save in a year by brushing his condensers every month, beside having them brushed as they are now.
 *
 * @param yours the machines that he may brush
 */
record BrushingSavings(BrushingCase hand, ForecastRates expected, List<Machine> yours) {

    private static final int MONTHS = 12;
    private static final int RISES = 3;

    Validated<Savings> over(LocalDate day, Comparison comparison) {
        if (hand.request().lastBrushed().filter(date -> date.isAfter(day)).isPresent()) {
            return Validated.invalid(new Problem(Code.WRONG_ORDER, hand.request().place(),
                    "last brushed on " + hand.request().lastBrushed().get() + ", after " + day, "a day that has been"));
        }
        SiteRisks risks = risks(day);
        return new ExpectedCharges(hand.shop(), risks.site(), hand.rates(), expected, day).charges(Optional.empty())
                .map(charges -> savings(risks, charges, comparison));
    }

    private SiteRisks risks(LocalDate day) {
        Set<String> ids = yours.stream().map(Machine::id).collect(Collectors.toSet());
        SiteHistory history = new SiteHistory(yours.stream()
                .map(machine -> new SiteHistory.Care(new Visit.Named(machine.id(), hand.request().place()),
                        Optional.empty(),
                        hand.request().lastBrushed(), Optional.empty()))
                .toList(), Optional.empty(), ForecastRates.Assumed.NOTHING,
                Optional.empty(), hand.book());
        return new SiteRisks(hand.site().only(ids), expected.at(hand.site().kind()), history, Optional.empty(), day,
                day);
    }

    private Savings savings(SiteRisks risks, ExpectedCharges.Charges charges, Comparison comparison) {
        double calls = stops(risks, asNow(), charges) - stops(risks, CleaningSchedule.every(1), charges);
        MonetaryAmount spared = MinorUnits.amount(Decimals.minorUnits(calls * charges.meanCharge(Cause.CONDENSER)),
                hand.shop().currency());
        MonetaryAmount bought = comparison.visit().amount().multiply(hand.request().bought());
        return new Savings(Decimals.of(calls, 1), spared, bought,
                rounded(spared.add(bought).subtract(comparison.year().amount())), electricity(risks),
                new BrushingInputs(hand.request(), risks).all());
    }

    /** As condensers are brushed now: so many paid brushings a year, evenly spaced. */
    private CleaningSchedule asNow() {
        double apart = (double) MONTHS / (hand.request().bought() + 1);
        return hand.request().bought() == 0
                ? CleaningSchedule.NEVER
                : new CleaningSchedule(
                        IntStream.rangeClosed(1, hand.request().bought()).mapToObj(k -> k * apart).toList(),
                        MONTHS, 1);
    }

    private static double stops(SiteRisks risks, CleaningSchedule brushing, ExpectedCharges.Charges charges) {
        return Forecast.of(risks.machines(),
                new MaintenancePolicy(0, CleaningSchedule.NEVER, brushing, charges.table()), risks.policy(),
                MONTHS).calls(Cause.CONDENSER).mean();
    }

    private Optional<Electricity> electricity(SiteRisks risks) {
        List<List<SourcedAmount>> saved = IntStream.range(0, yours.size()).mapToObj(i -> saved(risks, i))
                .filter(three -> !three.isEmpty()).toList();
        return saved.isEmpty()
                ? Optional.empty()
                : Optional.of(new Electricity(sum(saved, 0), sum(saved, 1), sum(saved, 2)));
    }

    private MonetaryAmount sum(List<List<SourcedAmount>> saved, int rise) {
        return rounded(
                Amounts.sum(saved.stream().map(three -> three.get(rise).amount()).toList(), hand.shop().currency()));
    }

    private List<SourcedAmount> saved(SiteRisks risks, int i) {
        MachineRisk risk = risks.machines().get(i);
        Machine machine = risks.site().machines().get(i);
        List<CondensingRise> dirty = rise(risks, risk, asNow());
        List<CondensingRise> clean = rise(risks, risk, CleaningSchedule.every(1));
        return risks.energy(machine, hand.limits())
                .map(use -> IntStream.range(0, RISES).mapToObj(k -> use.saved(dirty.get(k), clean.get(k))).toList())
                .orElse(List.of());
    }

    private static List<CondensingRise> rise(SiteRisks risks, MachineRisk risk, CleaningSchedule brushing) {
        return CondensingRise.range(MeanDirt.of(risk, risks.policy(), MONTHS, brushing));
    }

    private MonetaryAmount rounded(MonetaryAmount amount) {
        return Stepping.NEAREST.of(amount, expected.roundTo());
    }
}
