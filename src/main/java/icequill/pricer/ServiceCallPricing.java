package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.pricer.ResolvedVisit.Worker;
import icequill.rates.Grade;
import icequill.rates.ServiceCallRates;
import icequill.rates.ServiceCallRates.Zone;
import icequill.work.Attendance;
import icequill.work.Band;
import icequill.work.ChargeClass;
import icequill.work.Quantity;
import icequill.work.Route;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Prices the service call: by the distance's zone and the band in force on arrival, and the miles beside it. */
final class ServiceCallPricing {

    /** How the texts of its lines begin. */
    static final String LINE = "line.service-call";

    private static final BigDecimal BOTH_WAYS = BigDecimal.TWO;
    private static final String MILES_PER_HOUR = "mi/h";

    private final ResolvedVisit bound;
    private final ServiceCallRates rates;
    private final CurrencyUnit currency;

    ServiceCallPricing(ResolvedVisit bound) {
        this.bound = bound;
        this.rates = bound.rates().serviceCall();
        this.currency = bound.rates().currency();
    }

    /** One for the visit, or one for each day on which somebody comes. */
    List<Charge> charges() {
        List<Charge> charges = new ArrayList<>();
        List<LocalDateTime> arrivals = arrivals();
        if (!rates.eachDay()) {
            charges.add(charge(bound.visit().began().toLocalDateTime(), 0, cost(arrivals)));
            miles().ifPresent(charges::add);
            return charges;
        }
        for (int day = 0; day < arrivals.size(); day++) {
            charges.add(charge(arrivals.get(day), day, cost(List.of(arrivals.get(day)))));
            miles().ifPresent(charges::add);
        }
        return charges;
    }

    /** The first of each day. */
    private List<LocalDateTime> arrivals() {
        List<LocalDateTime> all = bound.visit().people().stream().map(Attendance::arrived)
                .map(ZonedDateTime::toLocalDateTime).sorted().toList();
        Set<LocalDate> days = new HashSet<>();
        return all.stream().filter(arrival -> days.add(arrival.toLocalDate())).toList();
    }

    private Charge charge(LocalDateTime arrival, int day, Cost cost) {
        Band band = bound.rates().labor().week().at(arrival);
        BigDecimal miles = bound.site().miles();
        Optional<Zone> within = rates.zone(miles);
        Zone zone = within.orElse(rates.zones().getLast());
        MonetaryAmount price = zone.price(band);
        List<Phrase> reasons = new ArrayList<>();
        reasons.add(within.isEmpty()
                ? Phrase.of("reason.beyond", miles(miles.subtract(zone.upTo())))
                : Phrase.of("reason.zone", miles(miles), miles(zone.upTo())));
        reasons.add(bound.rates().labor().week().isAlwaysTheSame()
                ? Phrase.of("reason.band-alone", Names.of(band.name()))
                : Phrase.of("reason.band-on-arrival", new Fact.Time(arrival.toLocalTime()), Names.of(band.name())));
        bound.rates().agreed().serviceCall(zone, band)
                .ifPresent(name -> reasons.add(Phrase.of("reason.rate-sheet", Names.of(name))));
        trips(arrival, day).ifPresent(reasons::add);
        Optional<Route> shared = bound.visit().terms().route().filter(round -> round.shared().isPresent());
        shared.ifPresent(round -> reasons.add(Phrase.of("reason.route", new Fact.Text(round.name()),
                Fact.number(round.shared().orElseThrow().stops(), ""))));
        if (rates.includes() > 0 && day == 0) {
            reasons.add(Phrase.of("reason.includes-minutes",
                    Fact.number(rates.includes(), Unit.MINUTE.symbol())));
        }
        Figure figure = Figure.price(price, "");
        Phrase text = Phrase.of(LINE, Names.of(zone.name()), Names.of(band.name()));
        if (within.isEmpty()) {
            BigDecimal over = miles.subtract(zone.upTo());
            text = Phrase.of(LINE + "-beyond", Names.of(zone.name()), Names.of(band.name()), miles(over));
            figure = figure.plus(Figure.term(BOTH_WAYS, "").times(Figure.term(over, Unit.MILE.symbol()))
                    .times(Figure.price(rates.beyond(), Unit.MILE.symbol())));
        }
        return new Charge(ChargeClass.TRAVEL, bound.visit().serviceCall(), text, Optional.empty(),
                Quantity.of(1, Unit.VISIT),
                within.filter(inside -> shared.isEmpty()).map(inside -> new UnitPrice(price, Unit.VISIT)),
                shared.flatMap(Route::shared).map(this::part).orElse(figure.rounded(Rounding.LINE, currency)),
                reasons, cost);
    }

    /** What the visit bears of the first arrival's charge. */
    private Figure part(Route.Shared stop) {
        return new Figure.Share(new BigDecimal(Amounts.plain(stop.whole())),
                Collections.nCopies(stop.stops(), BigDecimal.ONE), stop.number() - 1, Rounding.LINE.decimals(currency));
    }

    private Optional<Phrase> trips(LocalDateTime arrival, int day) {
        if (rates.eachDay()) {
            return day > 0
                    ? Optional.of(Phrase.of("reason.further-day", new Fact.Day(arrival.toLocalDate())))
                    : Optional.empty();
        }
        return bound.visit().days() > 1
                ? Optional.of(Phrase.of("reason.one-trip", Fact.number(bound.visit().days(), "")))
                : Optional.empty();
    }

    /** The miles that are charged by themselves; what they cost the shop is part of the service call's cost. */
    private Optional<Charge> miles() {
        String mile = Unit.MILE.symbol();
        BigDecimal both = bound.site().miles().multiply(BOTH_WAYS);
        return rates.perMile().filter(price -> both.signum() > 0)
                .map(price -> new Charge(ChargeClass.TRAVEL, bound.visit().serviceCall(), Phrase.of("line.miles"),
                        Optional.empty(), new Quantity(both, Unit.MILE), Optional.of(new UnitPrice(price, Unit.MILE)),
                        Figure.term(both, mile).times(Figure.price(price, mile)).rounded(Rounding.LINE, currency),
                        List.of(Phrase.of("reason.both-ways", miles(bound.site().miles()))),
                        Cost.none(currency, "owner.in-service-call")));
    }

    /** The miles there and back on each of the days, and the wages of the time on the road. */
    private Cost cost(List<LocalDateTime> arrivals) {
        List<Phrase> reasons = new ArrayList<>();
        reasons.add(Phrase.of("owner.mileage", new Fact.Amount(rates.mileCost()), Names.of(rates.place())));
        if (arrivals.size() > 1) {
            reasons.add(Phrase.of("owner.drives", Fact.number(arrivals.size(), "")));
        }
        rates.speed().ifPresent(speed -> {
            int drivers = arrivals.stream().mapToInt(arrival -> drivers(arrival.toLocalDate()).size()).sum();
            if (drivers > 0) {
                reasons.add(Phrase.of("owner.driving", Fact.number(drivers, ""),
                        new Fact.Measure(speed, Unit.MILE.symbol())));
            }
        });
        Figure all = arrivals.stream().map(this::drive).reduce(Figure::plus).orElseThrow();
        Explanation how = Explanation.of(all, reasons.toArray(Phrase[]::new));
        return new Cost(how.amount(currency), how);
    }

    private Figure drive(LocalDateTime arrival) {
        Figure miles = Figure.term(BOTH_WAYS, "").times(Figure.term(bound.site().miles(), Unit.MILE.symbol()));
        Figure driven = miles.times(Figure.price(rates.mileCost(), Unit.MILE.symbol())).rounded(Rounding.COST,
                currency);
        Band band = bound.rates().labor().week().at(arrival);
        return rates.speed().map(speed -> drivers(arrival.toLocalDate()).stream()
                .map(grade -> miles.over(Figure.term(speed, MILES_PER_HOUR))
                        .times(Figure.price(grade.hourly().wage(band), Unit.HOUR.symbol()))
                        .rounded(Rounding.COST, currency))
                .reduce(driven, Figure::plus)).orElse(driven);
    }

    private List<Grade> drivers(LocalDate day) {
        return bound.workers().stream().filter(worker -> isDriven(worker, day)).map(Worker::grade).toList();
    }

    /** Whether he comes on a day, and does not write down his time on the road himself. */
    private static boolean isDriven(Worker worker, LocalDate day) {
        return worker.stays().stream().anyMatch(stay -> stay.arrived().toLocalDate().equals(day))
                && worker.stays().stream().flatMap(stay -> stay.spells().stream())
                        .noneMatch(spell -> spell.on() == ChargeClass.TRAVEL);
    }

    private static Fact miles(BigDecimal miles) {
        return new Fact.Measure(miles, Unit.MILE.symbol());
    }
}
