package icequill.outlook;

import icequill.document.Outlook.Beside;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.MachineRisk;
import icequill.forecast.MeanDirt;
import icequill.forecast.StopPolicy;
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
        List<Provenance> marks = saved().stream().flatMap(List::stream).map(SourcedAmount::mark).toList();
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
        List<List<SourcedAmount>> saved = saved();
        return saved.isEmpty()
                ? List.of()
                : IntStream.range(0, RISES).mapToObj(rise -> Amounts
                        .sum(saved.stream().map(three -> three.get(rise).amount()).toList(), forecast.currency()))
                        .toList();
    }

    private List<List<SourcedAmount>> saved() {
        return IntStream.range(0, machines().size()).mapToObj(this::saved).filter(three -> !three.isEmpty()).toList();
    }

    /** What a clean condenser saves in a year, for each of the three rises; empty without a condenser or a rate. */
    private List<SourcedAmount> saved(int machine) {
        Machine found = machines().get(machine);
        List<CondensingRise> dirty = rise(machine, forecast.payPerCall(), forecast.risks().policy());
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
        List<SourcedAmount> bought = new ArrayList<>();
        List<BigDecimal> pounds = new ArrayList<>();
        for (int i = 0; i < machines().size(); i++) {
            List<MachineRisk> alone = List.of(forecast.risks().machines().get(i));
            double spared = calls(forecast.payPerCall(), alone) - calls(forecast.recommended(), alone);
            IceLost lost = new IceLost(forecast.risks().need(machines().get(i)), rates().bag().pounds(),
                    rates().bag().price());
            SourcedValue standing = lost.standing(hundredths(Math.max(0, spared)), rates().hoursDown(),
                    Provenance.COMMON_PRACTICE);
            pounds.add(standing.value(0));
            bought.add(lost.bought(standing));
        }
        BigDecimal sum = pounds.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        MonetaryAmount price = Amounts.sum(bought.stream().map(SourcedAmount::amount).toList(), forecast.currency());
        return sum.signum() == 0
                ? Optional.empty()
                : Optional.of(new Beside(Phrase.of("outlook.beside.ice"), Phrase.of("outlook.beside.ice-bought",
                        new Fact.Measure(sum, "lb"), rounded(price)), InputsAssembly.origin(Origin.ESTIMATE)));
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
        SourcedAmount each = EarlierReplacement.of(rates().machine().price(), lives.neglected(), lives.cleaned(),
                new Interest(rates().interest()), forecast.rates().place()).orElseThrow().difference();
        return new Beside(Phrase.of("outlook.beside.life"), Phrase.of("outlook.beside.life-each",
                Fact.number(lives.neglected(), ""), Fact.number(lives.cleaned(), ""), rounded(each.amount())),
                InputsAssembly.origin(lives.origin()));
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
