package icequill.files;

import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Reads amounts of money. */
final class Prices {

    private static final int MOST_DECIMALS = 4;

    private Prices() {
    }

    /** An amount in the shop's currency; more than four decimals, or more than the currency has beyond that, are reported. */
    static Optional<MonetaryAmount> amount(Fields fields, String key, CurrencyUnit currency) {
        Optional<MonetaryAmount> amount = fields.number(key).map(number -> Amounts.of(number, currency));
        int most = Math.max(MOST_DECIMALS, currency.getDefaultFractionDigits());
        if (amount.filter(found -> decimals(found) > most).isPresent()) {
            fields.problems().add(Code.OUT_OF_RANGE, fields.place(key),
                    "found " + Amounts.plain(amount.get()) + ", with more than " + most + " decimals",
                    "at most " + most + " decimals");
            return Optional.empty();
        }
        return amount;
    }

    /** A price that is charged as it stands, so with no more decimals than the currency has. */
    static Optional<MonetaryAmount> charged(Fields fields, String key, CurrencyUnit currency) {
        Optional<MonetaryAmount> amount = amount(fields, key, currency);
        amount.filter(found -> !Amounts.isWhole(found)).ifPresent(found -> fields.problems().add(Code.OUT_OF_RANGE,
                fields.place(key),
                "found " + Amounts.plain(found) + ", finer than " + currency.getCurrencyCode() + " is paid",
                "at most " + currency.getDefaultFractionDigits() + " decimals"));
        return amount.filter(Amounts::isWhole);
    }

    /** A price for each band, by its id; a band left out or unknown is reported, unless no bands could be read at all. */
    static Map<String, MonetaryAmount> byBand(Fields fields, String key, Set<String> bands, CurrencyUnit currency) {
        Map<String, MonetaryAmount> prices = new LinkedHashMap<>();
        Optional<Fields> child = fields.child(key);
        if (child.isEmpty() || bands.isEmpty()) {
            return prices;
        }
        for (String band : bands) {
            if (child.get().entries().containsKey(band)) {
                charged(child.get(), band, currency).ifPresent(price -> prices.put(band, price));
            } else {
                fields.problems().add(Code.MISSING, fields.place(key), "no price for the band \"" + band + "\"",
                        "a price for each of " + String.join(", ", bands));
            }
        }
        for (String named : child.get().entries().keySet()) {
            if (!bands.contains(named)) {
                Place place = child.get().branch().keys().getOrDefault(named, child.get().place());
                fields.problems().add(Problem.unknownName(place, "labor band", named, bands));
            }
        }
        return prices;
    }

    private static int decimals(MonetaryAmount amount) {
        return Math.max(0, Exact.normal(Amounts.number(amount)).scale());
    }
}
