package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.problem.Code;
import icequill.rates.ServiceCallRates;
import icequill.rates.ServiceCallRates.Zone;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes the service call's rates from a file of kind service-call. */
record ServiceCallReader(Fields fields, CurrencyUnit currency, Set<String> bands) {

    Optional<ServiceCallRates> read() {
        List<Zone> zones = Names.list(fields.children("zones"), this::zone);
        Optional<MonetaryAmount> beyond = Prices.amount(fields, "beyond", currency);
        Optional<MonetaryAmount> perMile = Prices.amount(fields, "perMile", currency);
        if (perMile.isPresent() && beyond.filter(price -> !price.isZero()).isPresent()) {
            fields.problems().add(Code.NOT_ALLOWED, fields.place("perMile"),
                    "miles past the last zone would be charged twice: by perMile and by beyond",
                    "beyond: 0 where every mile is charged");
        }
        Optional<MonetaryAmount> mileCost = Prices.amount(fields, "mileCost", currency);
        return zones.isEmpty()
                ? Optional.empty()
                : beyond.flatMap(past -> mileCost
                        .map(cost -> new ServiceCallRates(zones, past, perMile,
                                fields.integer("includes").orElse(0), fields.flag("eachDay"), cost,
                                fields.number("speed"),
                                fields.place("mileCost"))));
    }

    private Optional<Zone> zone(String id, Fields entry) {
        Optional<BigDecimal> upTo = entry.number("upTo");
        return entry.wording("name").flatMap(name -> upTo.map(miles -> new Zone(id, name, miles,
                Prices.byBand(entry, "prices", bands, currency), entry.place("prices"))));
    }
}
