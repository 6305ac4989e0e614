package icequill.files.pricing;

import icequill.files.yaml.YamlText;
import icequill.files.yaml.YamlText.Value;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Stepping;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Prices of a later day, made from those in force: price x (1 + percent), to the nearest full step. What is no price stays as it is,
 * comments and order too.
 *
 * @param from the first day on which they hold
 */
public record PriceRaise(LocalDate from, Map<PriceGroup, By> groups, CurrencyUnit currency) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * By how much.
     *
     * @param step above zero; empty for the smallest part that a price has
     */
    public record By(Percent percent, Optional<BigDecimal> step) {}

    /** A price before and after. */
    public record Raised(PriceGroup group, String path, MonetaryAmount before, MonetaryAmount after) {}

    /**
     * A file and the one that follows it.
     *
     * @param file its name within the folder
     * @param ended its text, ending on the first day of the new prices
     * @param next the name of the file that follows
     * @param begun the text of that
     */
    public record Following(String file, String ended, String next, String begun, List<Raised> prices) {

        public Following {
            prices = List.copyOf(prices);
        }
    }

    public PriceRaise {
        groups = new EnumMap<>(groups);
    }

    /**
     * The files that change.
     *
     * @param version whose files are read without a problem
     * @return a problem for a group of which no price is in force on that day, and for a price that a step would lower
     */
    public Validated<List<Following>> of(RatesVersion version) {
        Problems problems = new Problems();
        List<Following> all = new ArrayList<>();
        Set<PriceGroup> missing = EnumSet.copyOf(groups.keySet());
        version.files().keySet().stream().filter(name -> name.startsWith("pricing/")).forEach(name -> {
            YamlText text = YamlText.of(version.text(name).orElseThrow());
            if (isInForce(text)) {
                List<Raised> prices = raised(name, text, problems);
                prices.forEach(price -> missing.remove(price.group()));
                if (!prices.isEmpty()) {
                    all.add(following(name, text, prices));
                }
            }
        });
        missing.forEach(group -> problems.add(Code.MISSING, Place.ofFile("pricing"),
                "no price of " + group.key() + " is in force before " + from,
                group.kind().equals("materials")
                        ? "materials with a price: what has a markup follows its cost"
                        : "a file of kind " + group.kind() + " that begins earlier"));
        return problems.or(() -> all);
    }

    private boolean isInForce(YamlText text) {
        Optional<LocalDate> began = text.value("effective.from").map(Value::text).map(LocalDate::parse);
        Optional<LocalDate> ends = text.value("effective.until").map(Value::text).map(LocalDate::parse);
        return began.filter(first -> first.isBefore(from)).isPresent()
                && ends.filter(end -> !end.isAfter(from)).isEmpty();
    }

    private List<Raised> raised(String file, YamlText text, Problems problems) {
        String kind = text.value("kind").map(Value::text).orElse("");
        List<Raised> prices = new ArrayList<>();
        text.values().forEach(value -> groups.forEach((group, by) -> {
            if (group.kind().equals(kind) && group.holds(value.path(), key -> beside(text, value, key))) {
                Raised price = raised(group, value, by);
                prices.add(price);
                check(file, price, by, problems);
            }
        }));
        return prices;
    }

    private static String beside(YamlText text, Value value, String key) {
        return text.value(value.path().replaceFirst("[^.]+$", key)).map(Value::text).orElse("");
    }

    private Raised raised(PriceGroup group, Value value, By by) {
        BigDecimal price = new BigDecimal(value.text());
        BigDecimal step = by.step().orElseGet(() -> BigDecimal.ONE
                .movePointLeft(Math.max(price.scale(), currency.getDefaultFractionDigits())));
        BigDecimal exact = price.multiply(HUNDRED.add(by.percent().value())).movePointLeft(2);
        return new Raised(group, value.path(), Amounts.of(price, currency),
                Stepping.NEAREST.of(Amounts.of(exact, currency), step));
    }

    private static void check(String file, Raised price, By by, Problems problems) {
        boolean isLess = by.percent().value().signum() > 0
                ? price.after().isLessThan(price.before())
                : by.percent().value().signum() < 0 && price.after().isGreaterThan(price.before());
        boolean isGone = price.after().isZero() && !price.before().isZero();
        if (isLess || isGone) {
            problems.add(Code.OUT_OF_RANGE, new Place(file, 0, price.path()),
                    Amounts.plain(price.before()) + " and " + by.percent().value().toPlainString()
                            + " %, to the nearest full step, would be " + Amounts.plain(price.after()),
                    "a smaller step");
        }
    }

    private Following following(String name, YamlText text, List<Raised> prices) {
        Value began = text.value("effective.from").orElseThrow();
        String ended = text.value("effective.until").map(until -> text.with(Map.of(until, from.toString())))
                .orElseGet(() -> text.with(began, "until", from.toString()));
        Map<Value, String> changes = new LinkedHashMap<>();
        changes.put(began, from.toString());
        prices.forEach(price -> changes.put(text.value(price.path()).orElseThrow(), Amounts.plain(price.after())));
        String stem = name.replaceFirst("(-\\d{4}-\\d{2}-\\d{2})?[.]yaml$", "");
        return new Following(name, ended, stem + "-" + from + ".yaml", text.with(changes), prices);
    }
}
