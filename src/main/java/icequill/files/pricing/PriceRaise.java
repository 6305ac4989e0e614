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
 * Prices raised from a day on: price x (1 + percent), to the nearest full step. The version in force on the day before ends there and
 * a further one begins; each version that begins on that day or later is raised as it stands, so that no price falls back on a later
 * day. What is no price stays as it is, comments and order too, and so do rate sheets, which were agreed with somebody.
 *
 * @param from the first day on which they hold
 */
public record PriceRaise(LocalDate from, Map<PriceGroup, By> groups, CurrencyUnit currency) {

    private static final String RATE_SHEET = "rate-sheet";
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
     * A file whose prices are raised.
     *
     * @param file its name within the folder
     * @param split empty where the file begins on that day or later, and is raised as it stands
     * @param raised the text with the raised prices
     */
    public record Change(String file, Optional<Split> split, String raised, List<Raised> prices) {

        public Change {
            prices = List.copyOf(prices);
        }

        /** Where the raised text goes. */
        public String target() {
            return split.map(Split::next).orElse(file);
        }
    }

    /**
     * That a file ends on the day, and another one follows.
     *
     * @param ended the text of the one that ends
     * @param next the name of the one that follows
     */
    public record Split(String ended, String next) {}

    public PriceRaise {
        groups = new EnumMap<>(groups);
    }

    /**
     * The files that change, each kind's by their days.
     *
     * @param version whose files are read without a problem
     * @return a problem for a group of which no price is in force on the day before, for one that changes on that day already, and for a
     *     price that a step would lower
     */
    public Validated<List<Change>> of(RatesVersion version) {
        Problems problems = new Problems();
        List<Change> all = new ArrayList<>();
        Set<PriceGroup> missing = EnumSet.copyOf(groups.keySet());
        List<DatedText> files = DatedText.all(version);
        files.stream().filter(file -> !file.endsBy(from)).forEach(file -> {
            List<Raised> prices = raised(file, problems);
            if (!prices.isEmpty()) {
                all.add(file.begin().isBefore(from) ? split(file, prices) : asItStands(file, prices));
            }
        });
        files.stream().filter(file -> file.holds(from.minusDays(1)))
                .forEach(file -> missing.removeIf(group -> !file.prices(group).isEmpty()));
        missing.forEach(group -> problems.add(Code.MISSING, Place.ofFile("pricing"),
                "no price of " + group.key() + " is in force before " + from,
                group.kind().equals("materials")
                        ? "materials with a price: what has a markup follows its cost"
                        : "a file of kind " + group.kind() + " that begins earlier"));
        checkNotYetChanged(files, problems);
        return problems.or(() -> all);
    }

    /** The rate sheets that hold on that day or later; their prices stay as they were agreed. */
    public List<String> agreed(RatesVersion version) {
        return DatedText.all(version).stream().filter(file -> file.kind().equals(RATE_SHEET) && !file.endsBy(from))
                .map(DatedText::name).toList();
    }

    /** The same raise asked for twice is not done twice. */
    private void checkNotYetChanged(List<DatedText> files, Problems problems) {
        files.stream().filter(file -> file.begin().equals(from)).forEach(file -> files.stream()
                .filter(before -> before.kind().equals(file.kind()) && before.holds(from.minusDays(1)))
                .forEach(before -> groups.keySet().stream().filter(group -> before.differs(file, group))
                        .forEach(group -> problems.add(Code.NOT_ALLOWED, Place.ofFile(file.name()),
                                "prices of " + group.key() + " change on " + from + " already",
                                "another day, or other figures in that file"))));
    }

    private List<Raised> raised(DatedText file, Problems problems) {
        List<Raised> prices = new ArrayList<>();
        file.text().values().forEach(value -> groups.forEach((group, by) -> {
            if (file.isOf(group, value)) {
                Raised price = raised(group, value, by);
                prices.add(price);
                check(file.name(), price, by, problems);
            }
        }));
        return prices;
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

    private static Change asItStands(DatedText file, List<Raised> prices) {
        return new Change(file.name(), Optional.empty(), file.text().with(changes(file.text(), prices)), prices);
    }

    private Change split(DatedText file, List<Raised> prices) {
        YamlText text = file.text();
        Value began = text.value("effective.from").orElseThrow();
        String ended = text.value("effective.until").map(until -> text.with(Map.of(until, from.toString())))
                .orElseGet(() -> text.with(began, "until", from.toString()));
        Map<Value, String> changes = new LinkedHashMap<>(changes(text, prices));
        changes.put(began, from.toString());
        String stem = file.name().replaceFirst("(-\\d{4}-\\d{2}-\\d{2})?[.]yaml$", "");
        return new Change(file.name(), Optional.of(new Split(ended, stem + "-" + from + ".yaml")), text.with(changes),
                prices);
    }

    private static Map<Value, String> changes(YamlText text, List<Raised> prices) {
        Map<Value, String> changes = new LinkedHashMap<>();
        prices.forEach(price -> changes.put(text.value(price.path()).orElseThrow(), Amounts.plain(price.after())));
        return changes;
    }
}
