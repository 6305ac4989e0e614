package icequill.plans;

import icequill.forecast.Cause;
import icequill.forecast.Forecast;
import icequill.forecast.effects.EnergyLimits;
import icequill.forecast.effects.EnergyRate;
import icequill.forecast.effects.EnergyUse;
import icequill.forecast.effects.IceNeed;
import icequill.forecast.effects.Provenance;
import icequill.forecast.inputs.Estimate;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.inputs.Origin;
import icequill.forecast.inputs.SiteFactors;
import icequill.forecast.inputs.SiteHistory;
import icequill.forecast.inputs.SiteVisits;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.Pace;
import icequill.forecast.stops.SharedFactor;
import icequill.forecast.stops.StopPolicy;
import icequill.money.Percent;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.Survey;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * How likely the machines of a site are to stop, from what is expected of any machine and what is known of these.
 *
 * @param site with those machines that are looked after
 * @param day up to which it is known how long machines have run
 * @param start of the first year that is looked ahead
 */
public record SiteRisks(Site site, ForecastRates rates, SiteHistory history, Optional<Survey> survey, LocalDate day,
        LocalDate start) {

    private static final double HUNDRED = 100;

    /**
     * Since when a machine has not been looked after.
     *
     * @param cleaned empty when nobody knows
     * @param brushed empty when nobody knows, and for machines without a condenser to brush
     * @param isTold whether somebody said when it was cleaned; otherwise the shop's own visits do
     */
    public record Since(Machine machine, Optional<LocalDate> cleaned, Optional<LocalDate> brushed, boolean isTold) {}

    /**
     * All that is wrong with the history.
     *
     * @param months that are looked ahead
     */
    public Validated<SiteRisks> checked(List<String> machines, double months) {
        Problems problems = new Problems();
        for (SiteHistory.Care care : history.machines()) {
            if (!machines.contains(care.machine().id())) {
                problems.add(Problem.unknownName(care.machine().place(), "machine", care.machine().id(), machines));
            }
            care.cleaned().ifPresent(date -> past(date, care.machine().place(), problems));
            care.brushed().ifPresent(date -> past(date, care.machine().place(), problems));
            nameplate(care).ifPresent(problems::take);
        }
        if (problems.isEmpty()) {
            problems.addAll(absurd(EstimateLevels.USUAL, months));
        }
        if (problems.isEmpty()) {
            problems.addAll(absurd(EstimateLevels.GLOOMY, months));
        }
        return problems.or(() -> this);
    }

    private List<Problem> absurd(EstimateLevels levels, double months) {
        return Forecast.problems(machines(levels), CleaningSchedule.NEVER, CleaningSchedule.NEVER, policy(), months,
                rates.place());
    }

    private void past(LocalDate date, Place place, Problems problems) {
        if (date.isAfter(day)) {
            problems.add(new Problem(Code.WRONG_ORDER, place, "cleaned or brushed on " + date + ", after " + day,
                    "a day that has been"));
        }
    }

    public List<Since> since() {
        return site.machines().stream().map(machine -> {
            Optional<SiteHistory.Care> care = history.of(machine.id());
            Optional<LocalDate> told = care.flatMap(SiteHistory.Care::cleaned).or(() -> surveyed(machine));
            Optional<LocalDate> brushed = care.flatMap(SiteHistory.Care::brushed)
                    .or(() -> later(told, booked(machine, Cause.CONDENSER))).filter(date -> isBrushed(machine));
            return new Since(machine, told.or(() -> booked(machine, Cause.WATER)), brushed, told.isPresent());
        }).toList();
    }

    /** When the shop's own visits cleaned a side last; empty where none did. */
    public Optional<LocalDate> booked(Machine machine, Cause side) {
        return history.book().flatMap(book -> book.of(machine.id())).flatMap(care -> care.last(side))
                .map(SiteVisits.Cleaned::day);
    }

    private static Optional<LocalDate> later(Optional<LocalDate> one, Optional<LocalDate> other) {
        return Stream.concat(one.stream(), other.stream()).max(Comparator.naturalOrder());
    }

    private Optional<LocalDate> surveyed(Machine machine) {
        return survey.stream().flatMap(found -> found.machines().stream())
                .filter(condition -> condition.machine().id().equals(machine.id()))
                .flatMap(condition -> condition.lastCleaned().stream()).filter(date -> !date.isAfter(day)).findFirst();
    }

    public List<MachineRisk> machines() {
        return machines(EstimateLevels.USUAL);
    }

    public List<MachineRisk> machines(EstimateLevels levels) {
        FoulingLife condenser = clock(levels.condenser().of(rates.condenser()), SiteFactors.Speed::condenser);
        FoulingLife water = clock(levels.water().of(rates.water()), SiteFactors.Speed::water);
        double faults = levels.faults().of(rates.faults()).doubleValue();
        return since().stream()
                .map(since -> new MachineRisk(faults,
                        isBrushed(since.machine()) ? Optional.of(condenser) : Optional.empty(),
                        care(since, Cause.CONDENSER).after(day), water, care(since, Cause.WATER).after(day),
                        seasons(start)))
                .toList();
    }

    /** The clock of a side at this site. The files were checked for counts by which dirt would get safer. */
    private FoulingLife clock(FoulingEstimate.Stops stops, Function<SiteFactors.Speed, BigDecimal> side) {
        double faster = rates.factors().of(site).stream()
                .mapToDouble(factor -> side.apply(factor.speed()).doubleValue()).reduce(1, (one, other) -> one * other);
        return FoulingLife.ofChances(part(stops.bySix()), part(stops.byTwelve()), rates.place()).orElseThrow()
                .faster(faster);
    }

    private static double part(BigDecimal stopped) {
        return stopped.doubleValue() / FoulingEstimate.Stops.OF;
    }

    /** What a call does about the dirt, and how far the machines stop together. */
    public StopPolicy policy() {
        return new StopPolicy(rates.callsThatClean().value().doubleValue() / HUNDRED,
                new SharedFactor(rates.sitesDiffer().usual().doubleValue() / HUNDRED));
    }

    /** The same by other rates. */
    public SiteRisks with(ForecastRates other) {
        return new SiteRisks(site, other, history, survey, day, start);
    }

    /** The energy that a machine's ice takes; empty where nothing says what it takes when clean, or no ice is used. */
    public Optional<EnergyUse> energy(Machine machine, EnergyLimits limits) {
        return rates.beside().iceUsed().usual().signum() == 0
                ? Optional.empty()
                : history.of(machine.id()).flatMap(SiteRisks::nameplate).map(Validated::orElseThrow)
                        .or(() -> limits.rate(machine, machine.installed().orElse(LocalDate.EPOCH)))
                        .map(rate -> new EnergyUse(rate, need(machine), season().days(),
                                rates.beside().electricity().price()));
    }

    private static Optional<Validated<EnergyRate>> nameplate(SiteHistory.Care care) {
        return care.nameplate().map(rate -> EnergyRate.ofNameplate(rate, care.machine().place()));
    }

    /** The ice that is used of a machine. */
    public IceNeed need(Machine machine) {
        Estimate used = rates.beside().iceUsed();
        return IceNeed.duty(machine.harvestRate(), new Percent(used.usual()),
                used.origin().kind() == Origin.Kind.ESTIMATE ? Provenance.FROM_MEMORY : Provenance.OWN);
    }

    /** What is known of a side of a machine: where the shop's own visits cleaned it last, all that they did to it. */
    public SideCare care(Since since, Cause side) {
        Optional<LocalDate> last = side == Cause.CONDENSER ? since.brushed() : since.cleaned();
        List<SideCare.Cleaning> cleanings = last.equals(booked(since.machine(), side))
                ? history.book().flatMap(book -> book.of(since.machine().id())).stream()
                        .flatMap(care -> care.of(side).stream()).map(SideCare.Cleaning::of).toList()
                : last.stream().map(date -> new SideCare.Cleaning(date, false)).toList();
        return SideCare.of(rates, pace(side), since.machine(), side, day.minusYears(1), cleanings);
    }

    /** How the months of a year count for a cause. */
    public Pace pace(Cause cause) {
        return season().pace().times(rates.seasons().pace(cause));
    }

    /** As a forecast takes them that begins on a day. */
    public MachineRisk.Seasons seasons(LocalDate from) {
        return new MachineRisk.Seasons(pace(Cause.RANDOM).from(from), pace(Cause.CONDENSER).from(from),
                pace(Cause.WATER).from(from));
    }

    public OpenMonths season() {
        return new OpenMonths(site.season());
    }

    /** Whether any machine has a condenser to brush. */
    public boolean hasCondensers() {
        return site.machines().stream().anyMatch(SiteRisks::isBrushed);
    }

    public static boolean isBrushed(Machine machine) {
        return machine.cooling() == Machine.Cooling.AIR;
    }
}
