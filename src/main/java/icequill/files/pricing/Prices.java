package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Percent;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.work.ChargeClass;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Reads amounts of money, and values by band and class. */
public final class Prices {

    private static final int MOST_DECIMALS = 4;
    private static final int MOST_PERCENT = 100;

    private Prices() {
    }

    /** An amount in the shop's currency; more than four decimals, or more than the currency has beyond that, are reported. */
    public static Optional<MonetaryAmount> amount(Fields fields, String key, CurrencyUnit currency) {
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
    public static Optional<MonetaryAmount> charged(Fields fields, String key, CurrencyUnit currency) {
        Optional<MonetaryAmount> amount = amount(fields, key, currency);
        amount.filter(found -> !Amounts.isWhole(found)).ifPresent(found -> fields.problems().add(Code.OUT_OF_RANGE,
                fields.place(key),
                "found " + Amounts.plain(found) + ", finer than " + currency.getCurrencyCode() + " is paid",
                "at most " + currency.getDefaultFractionDigits() + " decimals"));
        return amount.filter(Amounts::isWhole);
    }

    /** Percentages off, by the classes that are named. */
    static Map<ChargeClass, Percent> byClass(Fields fields, String key) {
        Map<ChargeClass, Percent> percents = new EnumMap<>(ChargeClass.class);
        fields.child(key).ifPresent(byClass -> byClass.entries().keySet().forEach(name -> Fields
                .constantOf(name, ChargeClass.class).ifPresent(chargeClass -> byClass.percent(name, MOST_PERCENT)
                        .ifPresent(part -> percents.put(chargeClass, part)))));
        return percents;
    }

    /** A price for each band. */
    static Map<String, MonetaryAmount> byBand(Fields fields, String key, Set<String> bands, CurrencyUnit currency) {
        return byBand(fields, key, bands, "price", (prices, band) -> charged(prices, band, currency));
    }

    /**
     * A value for each band, by its id; a band left out or unknown is reported, unless no bands could be read at all.
     *
     * @param what the value is, for a report
     */
    static <T> Map<String, T> byBand(Fields fields, String key, Set<String> bands, String what,
            BiFunction<Fields, String, Optional<T>> value) {
        Map<String, T> values = new LinkedHashMap<>();
        Optional<Fields> child = fields.child(key);
        if (child.isEmpty() || bands.isEmpty()) {
            return values;
        }
        for (String band : bands) {
            if (child.get().entries().containsKey(band)) {
                value.apply(child.get(), band).ifPresent(found -> values.put(band, found));
            } else {
                fields.problems().add(Code.MISSING, fields.place(key), "no " + what + " for the band \"" + band + "\"",
                        "a " + what + " for each of " + String.join(", ", bands));
            }
        }
        for (String named : child.get().entries().keySet()) {
            if (!bands.contains(named)) {
                Place place = child.get().branch().keys().getOrDefault(named, child.get().place());
                fields.problems().add(Problem.unknownName(place, "labor band", named, bands));
            }
        }
        return values;
    }

    /**
     * One value for all bands, or one for each.
     *
     * @param what the value is, for a report
     */
    static <T> Map<String, T> everyBand(Fields fields, String key, Set<String> bands, String what,
            BiFunction<Fields, String, Optional<T>> value) {
        if (fields.child(key).isPresent()) {
            return byBand(fields, key, bands, what, value);
        }
        Map<String, T> values = new LinkedHashMap<>();
        value.apply(fields, key).ifPresent(same -> bands.forEach(band -> values.put(band, same)));
        return values;
    }

    private static int decimals(MonetaryAmount amount) {
        return Math.max(0, Exact.normal(Amounts.number(amount)).scale());
    }
}
