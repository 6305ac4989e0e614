package icequill.outlook;

import icequill.document.Outlook;
import icequill.document.Outlook.Beside;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.MeanDirt;
import icequill.forecast.effects.CondensingRise;
import icequill.forecast.effects.EarlierReplacement;
import icequill.forecast.effects.IceLost;
import icequill.forecast.effects.Interest;
import icequill.forecast.effects.Provenance;
import icequill.forecast.effects.SourcedAmount;
import icequill.forecast.effects.SourcedValue;
import icequill.forecast.effects.WaterAndScale;
import icequill.forecast.inputs.NonCashEffects;
import icequill.forecast.inputs.Origin;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import icequill.money.Amounts;
import icequill.party.Machine;
import icequill.plans.SiteRisks;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/** Figures what comes beside the cash in a year: nobody cleaning, against the plan that cleans as often as recommended. */
public record NonCashAssembly(SiteForecast forecast) {

    private static final int MONTHS = 12;
    private static final int HUNDREDTHS = 2;
    private static final int RISES = 3;

    List<Beside> all() {
        List<Beside> all = new ArrayList<>();
        energy().ifPresent(all::add);
        // Whoever told what ice in its place costs him is not told our guess of it too.
        if (forecast.hand().history().ownCosts().isEmpty()) {
            ice().ifPresent(all::add);
        }
        new OwnCostsAhead(forecast).row().ifPresent(all::add);
        all.add(replacement());
        scale().ifPresent(all::add);
        return all;
    }

    private NonCashEffects rates() {
        return forecast.rates().beside();
    }

    private List<Machine> machines() {
        return forecast.risks().site().machines();
    }

    /** What stands on the sheet; empty where no machine has such a condenser. */
    private Optional<Beside> energy() {
        List<MonetaryAmount> sums = electricity();
        List<Provenance> marks = saved(forecast.payPerCall()).stream().flatMap(List::stream).map(SourcedAmount::mark)
                .toList();
        return sums.isEmpty()
                ? Optional.empty()
                : Optional.of(new Beside(Phrase.of("outlook.beside.energy"),
                        Phrase.of("outlook.beside.energy-range", rounded(sums.get(0)), rounded(sums.get(2)),
                                rounded(sums.get(1))),
                        mark(marks)));
    }

    /**
     * What the recommended plan saves of electricity in the first year beside paying per call, for the low, the middle and the high
     * rise that a year's dirt may bring; empty where no machine has such a condenser.
     */
    public List<MonetaryAmount> electricity() {
        return electricity(forecast.payPerCall());
    }

    /** The same beside another way. */
    private List<MonetaryAmount> electricity(CareOption way) {
        List<List<SourcedAmount>> saved = saved(way);
        return saved.isEmpty()
                ? List.of()
                : IntStream.range(0, RISES).mapToObj(rise -> Amounts
                        .sum(saved.stream().map(three -> three.get(rise).amount()).toList(), forecast.currency()))
                        .toList();
    }

    private List<List<SourcedAmount>> saved(CareOption way) {
        return IntStream.range(0, machines().size()).mapToObj(machine -> saved(machine, way))
                .filter(three -> !three.isEmpty()).toList();
    }

    /** What a clean condenser saves in a year, for each of the three rises; empty without a condenser or a rate. */
    private List<SourcedAmount> saved(int machine, CareOption way) {
        Machine found = machines().get(machine);
        List<CondensingRise> dirty = rise(machine, way,
                way.equals(forecast.payPerCall()) ? forecast.risks().policy() : StopPolicy.RESTARTS);
        // By the plan's own brushings alone: what few calls between them brush besides is left out, on the careful side.
        List<CondensingRise> clean = rise(machine, forecast.recommended(), StopPolicy.RESTARTS);
        return Optional.of(found).filter(SiteRisks::isBrushed)
                .flatMap(air -> forecast.risks().energy(air, forecast.limits()))
                .map(use -> IntStream.range(0, RISES).mapToObj(i -> use.saved(dirty.get(i), clean.get(i))).toList())
                .orElse(List.of());
    }

    private List<CondensingRise> rise(int machine, CareOption way, StopPolicy calls) {
        MachineRisk risk = forecast.risks().machines().get(machine);
        return CondensingRise.range(MeanDirt.of(risk, calls, MONTHS, way.care().condenser()));
    }

    /** What stops that a plan spares would have cost in bought ice; empty where it spares none. */
    private Optional<Beside> ice() {
        if (rates().iceUsed().usual().signum() == 0) {
            return Optional.empty();
        }
        BigDecimal sum = standing(forecast.payPerCall()).stream().map(pounds -> pounds.value(0))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return sum.signum() == 0
                ? Optional.empty()
                : Optional.of(new Beside(Phrase.of("outlook.beside.ice"), Phrase.of("outlook.beside.ice-bought",
                        new Fact.Measure(sum, "lb"), rounded(bought(forecast.payPerCall()))),
                        InputsAssembly.origin(Origin.ESTIMATE)));
    }

    /** Ice of each machine that a way lets go unmade beyond the recommended plan, lb. */
    private List<SourcedValue> standing(CareOption way) {
        return IntStream.range(0, machines().size()).mapToObj(machine -> {
            List<MachineRisk> alone = List.of(forecast.risks().machines().get(machine));
            double more = calls(way, alone) - calls(forecast.recommended(), alone);
            return lost(machine).standing(hundredths(Math.max(0, more)), rates().hoursDown(),
                    Provenance.COMMON_PRACTICE);
        }).toList();
    }

    private IceLost lost(int machine) {
        return new IceLost(forecast.risks().need(machines().get(machine)), rates().bag().pounds(),
                rates().bag().price());
    }

    private MonetaryAmount bought(CareOption way) {
        List<SourcedValue> standing = standing(way);
        return Amounts.sum(IntStream.range(0, standing.size())
                .mapToObj(machine -> lost(machine).bought(standing.get(machine)).amount()).toList(),
                forecast.currency());
    }

    /**
     * What dirt costs in the first year of a way, each as round as is known: all stops where the customer told what they cost him, the
     * rest beyond the recommended plan.
     */
    Outlook.DirtCosts of(CareOption way) {
        List<MonetaryAmount> electricity = electricity(way);
        MonetaryAmount none = Amounts.zero(forecast.currency());
        MonetaryAmount wear = way.equals(forecast.payPerCall()) ? earlier().multiply(machines().size()) : none;
        return new Outlook.DirtCosts(forecast.rounded(stops(way)),
                electricity.isEmpty() ? none : Amounts.larger(none, forecast.rounded(electricity.get(1))), wear);
    }

    /** What the customer says that stops cost him, else ice bought in their time. */
    private MonetaryAmount stops(CareOption way) {
        return new OwnCostsAhead(forecast).ofFirstYear(way).orElseGet(() -> bought(way));
    }

    private double calls(CareOption way, List<MachineRisk> machines) {
        Forecast found = forecast.forecast(way, machines, 1);
        return found.calls().mean();
    }

    private static BigDecimal hundredths(double number) {
        return Decimals.of(number, HUNDREDTHS);
    }

    private Beside replacement() {
        NonCashEffects.Lives lives = rates().lives();
        return new Beside(Phrase.of("outlook.beside.life"), Phrase.of("outlook.beside.life-each",
                Fact.number(lives.neglected(), ""), Fact.number(lives.cleaned(), ""), rounded(earlier())),
                InputsAssembly.origin(lives.origin()));
    }

    /** What replacing one neglected machine earlier costs in a year, as round as is known. */
    private MonetaryAmount earlier() {
        NonCashEffects.Lives lives = rates().lives();
        return forecast.rounded(EarlierReplacement.of(rates().machine().price(), lives.neglected(), lives.cleaned(),
                new Interest(rates().interest()), forecast.rates().place()).orElseThrow().difference().amount());
    }

    /** Empty where nobody knows how hard the water is. */
    private Optional<Beside> scale() {
        BigDecimal ice = machines().stream()
                .map(machine -> forecast.risks().need(machine).pounds().value(0))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .multiply(BigDecimal.valueOf(forecast.risks().season().days()));
        return forecast.risks().site().conditions().hardness().filter(hardness -> ice.signum() > 0).map(hardness -> {
            SourcedValue minerals = new WaterAndScale(ice, rates().water(), hardness, Provenance.DERIVED)
                    .mineralPounds();
            return new Beside(Phrase.of("outlook.beside.scale"), Phrase.of("outlook.beside.scale-pounds",
                    Fact.number(minerals.value(0).longValueExact(), "lb"), new Fact.Measure(hardness, "")),
                    mark(List.of(minerals.mark())));
        });
    }

    private Fact rounded(MonetaryAmount amount) {
        return new Fact.Measure(Amounts.number(forecast.rounded(amount)), "");
    }

    /** Of all, the least sure. */
    private static Phrase mark(List<Provenance> marks) {
        Provenance least = marks.stream().max(Provenance::compareTo).orElse(Provenance.DERIVED);
        return Phrase.of("outlook.mark." + ConstantKey.of(least));
    }
}
