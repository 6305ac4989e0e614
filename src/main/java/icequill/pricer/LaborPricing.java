package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Rounding;
import icequill.party.Acceptance;
import icequill.pricer.BilledTime.Piece;
import icequill.pricer.BilledTime.Rate;
import icequill.pricer.BlockPricing.Part;
import icequill.pricer.ResolvedVisit.Worker;
import icequill.rates.Grade;
import icequill.rates.LaborRates;
import icequill.work.ChargeClass;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Prices labor: one charge per grade, band, class and outcome, the minutes summed over people before they are priced. */
final class LaborPricing {

    private static final int MINUTES = 60;
    private static final Figure HOUR = Figure.term(MINUTES, "min/h");

    private final ResolvedVisit bound;
    private final LaborRates rates;
    private final CurrencyUnit currency;

    LaborPricing(ResolvedVisit bound) {
        this.bound = bound;
        this.rates = bound.rates().labor();
        this.currency = bound.rates().currency();
    }

    /** @param blocks that were sold ahead; what one of them pays for is a charge of its own */
    List<Charge> charges(BlockPricing blocks) {
        List<BilledTime> times = times();
        Map<BilledTime.Key, List<Piece>> byKey = new LinkedHashMap<>();
        times.stream().flatMap(time -> time.pieces().stream())
                .forEach(piece -> byKey.computeIfAbsent(piece.key(), key -> new ArrayList<>()).add(piece));
        boolean severalBands = byKey.keySet().stream().filter(key -> key.rate() != Rate.OVERTIME)
                .map(BilledTime.Key::band).distinct().count() > 1;
        return byKey.entrySet().stream().filter(entry -> !isFlat(entry.getKey()))
                .flatMap(entry -> charges(entry.getKey(), entry.getValue(),
                        reasons(entry.getKey(), times, severalBands), blocks).stream())
                .toList();
    }

    private List<Charge> charges(BilledTime.Key key, List<Piece> pieces, List<Phrase> reasons, BlockPricing blocks) {
        long billed = pieces.stream().mapToLong(Piece::billed).sum();
        long worked = pieces.stream().mapToLong(Piece::worked).sum();
        List<Part> parts = key.outcome().isCharged()
                ? blocks.minutes(key.on(), key.band(), billed)
                : List.of(new Part(billed, Optional.empty()));
        List<Charge> charges = new ArrayList<>();
        for (Part part : parts) {
            boolean last = charges.size() == parts.size() - 1;
            long own = last ? worked : Math.min(worked, part.minutes());
            worked -= own;
            Charge charge = charge(key, part.minutes(), own, charges.isEmpty() ? reasons : List.of());
            charges.add(part.drawn().map(charge::paidBy).orElse(charge));
        }
        return charges;
    }

    /** What the people's time costs the shop, where none of it is charged as labor. */
    List<Figure> costs() {
        return times().stream().flatMap(time -> time.pieces().stream())
                .map(piece -> costFigure(piece.key(), piece.worked())).toList();
    }

    /** What the time costs the shop that flat prices stand for. */
    List<Figure> flatCosts() {
        return times().stream().flatMap(time -> time.pieces().stream()).filter(piece -> isFlat(piece.key()))
                .map(piece -> costFigure(piece.key(), piece.worked())).toList();
    }

    private boolean isFlat(BilledTime.Key key) {
        return bound.isFlat() && key.on() == ChargeClass.CLEANING;
    }

    /** None of a sale, to which nobody came. */
    private List<BilledTime> times() {
        if (bound.workers().isEmpty()) {
            return List.of();
        }
        Worker first = BilledTime.first(bound.workers());
        return BilledTime.together(bound.workers(), rates).stream().map(people -> BilledTime.of(people, rates,
                people.contains(first) ? bound.rates().serviceCall().includes() : 0)).toList();
    }

    private Charge charge(BilledTime.Key key, long billed, long worked, List<Phrase> reasons) {
        Grade grade = key.grade();
        MonetaryAmount hourly = key.hourly();
        MonetaryAmount wage = grade.hourly().wage(key.band());
        Figure list = Figure.term(billed, Unit.MINUTE.symbol()).times(Figure.price(hourly, Unit.HOUR.symbol()))
                .over(HOUR)
                .rounded(Rounding.LINE, currency);
        Phrase text = Phrase.of(line(key.rate()), Names.of(grade.name()), Names.of(key.band().name()),
                key.on().word());
        Explanation cost = Explanation.of(costFigure(key, worked),
                Phrase.of("owner.wage", new Fact.Amount(wage), Names.of(grade.place())));
        return new Charge(key.on(), key.outcome(), text, Optional.empty(), Quantity.of(billed, Unit.MINUTE),
                Optional.of(new UnitPrice(hourly, Unit.HOUR)), list, reasons, new Cost(cost.amount(currency), cost));
    }

    private static String line(Rate rate) {
        return switch (rate) {
        case WORK, TRAVEL -> "line.labor";
        case FIRST_HOUR -> "line.labor-first-hour";
        case OVERTIME -> "line.labor-overtime";
        };
    }

    private Figure costFigure(BilledTime.Key key, long worked) {
        return Figure.term(worked, Unit.MINUTE.symbol())
                .times(Figure.price(key.grade().hourly().wage(key.band()), Unit.HOUR.symbol()))
                .over(HOUR)
                .rounded(Rounding.COST, currency);
    }

    private List<Phrase> reasons(BilledTime.Key key, List<BilledTime> times, boolean severalBands) {
        List<BilledTime> mine = times.stream()
                .filter(time -> time.pieces().stream().anyMatch(piece -> piece.key().equals(key))).toList();
        List<Phrase> reasons = new ArrayList<>();
        if (key.rate() == Rate.WORK || key.rate() == Rate.OVERTIME) {
            bound.rates().agreed().hourly(key.grade(), key.band())
                    .ifPresent(name -> reasons.add(Phrase.of("reason.rate-sheet", Names.of(name))));
        }
        if (key.rate() == Rate.FIRST_HOUR) {
            bound.rates().agreed().firstHour(key.grade(), key.band())
                    .ifPresent(name -> reasons.add(Phrase.of("reason.rate-sheet", Names.of(name))));
        }
        List<Long> people = mine.stream().flatMap(time -> time.billed(key).stream()).toList();
        if (people.size() > 1) {
            reasons.add(Phrase.of("reason.people", Fact.number(people.size(), ""),
                    new Fact.Several(people.stream().map(LaborPricing::minutes).toList())));
        }
        if (key.rate() == Rate.OVERTIME) {
            reasons.add(Phrase.of("reason.overtime",
                    Fact.number(rates.counting().overtime().orElseThrow().after() / MINUTES, Unit.HOUR.symbol())));
        } else if (severalBands) {
            long minutes = mine.stream().flatMap(time -> time.pieces().stream())
                    .filter(piece -> piece.key().equals(key)).mapToLong(Piece::worked).sum();
            reasons.add(Phrase.of("reason.band", minutes(minutes), Names.of(key.band().name())));
        }
        mine.stream().filter(time -> time.topUp() > 0 && time.pieces().getFirst().key().equals(key))
                .map(this::topUp).distinct().forEach(reasons::add);
        mine.stream().filter(time -> time.included() > 0 && time.pieces().getFirst().key().equals(key))
                .map(time -> Phrase.of("reason.in-service-call", minutes(time.included()))).forEach(reasons::add);
        return reasons;
    }

    private Phrase topUp(BilledTime time) {
        Fact worked = minutes(time.worked());
        Fact billed = minutes(time.billed());
        if (!time.byMinimum()) {
            Fact increment = new Fact.Measure(time.increment(), Unit.MINUTE.symbol());
            return Phrase.of("reason.increment", worked, billed, increment);
        }
        Optional<Acceptance> accepted = bound.site().customer().accepted();
        return accepted
                .map(paper -> Phrase.of("reason.minimum-accepted", worked, billed, new Fact.Day(paper.date()),
                        new Fact.Text(paper.paper())))
                .orElseGet(() -> Phrase.of("reason.minimum", worked, billed));
    }

    private static Fact minutes(long minutes) {
        return Fact.number(minutes, Unit.MINUTE.symbol());
    }
}
