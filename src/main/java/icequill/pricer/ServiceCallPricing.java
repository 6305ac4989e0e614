package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Rounding;
import icequill.rates.ServiceCallRates;
import icequill.rates.ServiceCallRates.Zone;
import icequill.work.Band;
import icequill.work.ChargeClass;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Prices the service call: by the distance's zone and the band in force on arrival. */
final class ServiceCallPricing {

    private static final BigDecimal BOTH_WAYS = BigDecimal.TWO;

    private ServiceCallPricing() {
    }

    static Charge charge(ResolvedVisit bound) {
        ServiceCallRates rates = bound.rates().serviceCall();
        CurrencyUnit currency = bound.rates().currency();
        LocalDateTime arrival = bound.visit().began().toLocalDateTime();
        Band band = bound.rates().labor().week().at(arrival);
        BigDecimal miles = bound.site().miles();
        Optional<Zone> within = rates.zone(miles);
        Zone zone = within.orElse(rates.zones().getLast());
        MonetaryAmount price = zone.price(band);
        List<Phrase> reasons = new ArrayList<>();
        reasons.add(Phrase.of("reason.zone", miles(miles), miles(zone.upTo())));
        reasons.add(bound.rates().labor().week().isAlwaysTheSame()
                ? Phrase.of("reason.band-alone", Names.of(band.name()))
                : Phrase.of("reason.band-on-arrival", new Fact.Time(arrival.toLocalTime()), Names.of(band.name())));
        if (bound.visit().days() > 1) {
            reasons.add(Phrase.of("reason.one-trip", Fact.number(bound.visit().days(), "")));
        }
        Figure figure = Figure.price(price, "");
        Phrase text = Phrase.of("line.service-call", Names.of(zone.name()), Names.of(band.name()));
        if (within.isEmpty()) {
            BigDecimal over = miles.subtract(zone.upTo());
            reasons.set(0, Phrase.of("reason.beyond", miles(over)));
            text = Phrase.of("line.service-call-beyond", Names.of(zone.name()), Names.of(band.name()), miles(over));
            figure = figure.plus(Figure.term(BOTH_WAYS, "").times(Figure.term(over, Unit.MILE.symbol()))
                    .times(Figure.price(rates.beyond(), Unit.MILE.symbol())));
        }
        return new Charge(ChargeClass.TRAVEL, bound.visit().serviceCall(), text, Optional.empty(),
                Quantity.of(1, Unit.VISIT), within.map(inside -> new UnitPrice(price, Unit.VISIT)),
                figure.rounded(Rounding.LINE, currency), reasons, cost(rates, miles, currency));
    }

    private static Cost cost(ServiceCallRates rates, BigDecimal miles, CurrencyUnit currency) {
        Figure driven = Figure.term(BOTH_WAYS, "").times(Figure.term(miles, Unit.MILE.symbol()))
                .times(Figure.price(rates.mileCost(), Unit.MILE.symbol())).rounded(Rounding.COST, currency);
        Explanation how = Explanation.of(driven,
                Phrase.of("owner.mileage", new Fact.Amount(rates.mileCost()), Names.of(rates.place())));
        return new Cost(how.amount(currency), how);
    }

    private static Fact miles(BigDecimal miles) {
        return new Fact.Measure(miles, Unit.MILE.symbol());
    }
}
