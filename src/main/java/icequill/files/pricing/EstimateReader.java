package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.forecast.inputs.Estimate;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.inputs.NonCashEffects;
import icequill.forecast.inputs.Origin;
import icequill.problem.Code;
import icequill.problem.Problem;
import java.math.BigDecimal;
import java.util.Optional;
import javax.money.CurrencyUnit;

/** Reads figures that nobody knows exactly, each with where it comes from. */
public final class EstimateReader {

    private EstimateReader() {
    }

    /** A figure with a careful and a gloomy one around it. */
    public static Optional<Estimate> guess(Fields fields, String key, Origin usual) {
        return fields.child(key).flatMap(entry -> entry.number("usual")
                .flatMap(middle -> entry.number("low").flatMap(low -> entry.number("high")
                        .filter(high -> inOrder(entry, low, middle, high))
                        .map(high -> new Estimate(middle, low, high, origin(entry, usual))))));
    }

    private static boolean inOrder(Fields entry, BigDecimal low, BigDecimal usual, BigDecimal high) {
        boolean inOrder = low.compareTo(usual) <= 0 && usual.compareTo(high) <= 0;
        if (!inOrder) {
            entry.problems().add(new Problem(Code.WRONG_ORDER, entry.place("usual"),
                    "low " + low.toPlainString() + ", usual " + usual.toPlainString() + ", high "
                            + high.toPlainString(),
                    "low at most the usual, high at least"));
        }
        return inOrder;
    }

    /** How soon dirt stops machines. */
    public static Optional<FoulingEstimate> dirt(Fields fields, String key, Origin usual) {
        return fields.child(key).flatMap(entry -> {
            Optional<FoulingEstimate.Stops> middle = stops(entry, "usual");
            Optional<FoulingEstimate.Stops> low = stops(entry, "low");
            Optional<FoulingEstimate.Stops> high = stops(entry, "high");
            return middle.isPresent() && low.isPresent() && high.isPresent()
                    && inOrder(entry, low.get().bySix(), middle.get().bySix(), high.get().bySix())
                    && inOrder(entry, low.get().byTwelve(), middle.get().byTwelve(), high.get().byTwelve())
                            ? Optional
                                    .of(new FoulingEstimate(middle.get(), low.get(), high.get(), origin(entry, usual)))
                            : Optional.empty();
        });
    }

    private static Optional<FoulingEstimate.Stops> stops(Fields fields, String key) {
        return fields.child(key).flatMap(entry -> entry.number("by6").filter(EstimateReader::isBetween)
                .flatMap(six -> entry.number("by12").filter(EstimateReader::isBetween)
                        .filter(twelve -> neverSafer(entry, six, twelve))
                        .map(twelve -> new FoulingEstimate.Stops(six, twelve))));
    }

    private static boolean isBetween(BigDecimal stopped) {
        return stopped.signum() > 0 && stopped.compareTo(BigDecimal.valueOf(FoulingEstimate.Stops.OF)) < 0;
    }

    /** Of those that run after six months, at least as large a part stops in the next six. */
    private static boolean neverSafer(Fields entry, BigDecimal six, BigDecimal twelve) {
        BigDecimal of = BigDecimal.valueOf(FoulingEstimate.Stops.OF);
        BigDecimal run = of.subtract(six);
        BigDecimal mostLeft = run.multiply(run);
        boolean valid = of.subtract(twelve).multiply(of).compareTo(mostLeft) <= 0;
        if (!valid) {
            BigDecimal least = of.subtract(mostLeft.movePointLeft(1).multiply(new BigDecimal("0.5")));
            entry.problems().add(Code.NOT_ALLOWED, entry.place("by12"),
                    "with " + six.toPlainString() + " of " + FoulingEstimate.Stops.OF + " by month 6 and "
                            + twelve.toPlainString() + " by month 12, dirt would get safer with time",
                    "by month 12 at least " + least.stripTrailingZeros().toPlainString());
        }
        return valid;
    }

    /** Who says so, as the entry has it. */
    static Origin origin(Fields entry, Origin usual) {
        return entry.integer("visits").filter(visits -> visits > 0).map(Origin::visits)
                .or(() -> entry.integer("runs").filter(runs -> runs > 0).map(Origin::runs))
                .orElseGet(() -> entry.text("from").filter("customer"::equals).isPresent() ? Origin.CUSTOMER : usual);
    }

    public static Optional<NonCashEffects.Known> price(Fields fields, String key, CurrencyUnit currency,
            Origin origin) {
        return Prices.amount(fields, key, currency).map(price -> new NonCashEffects.Known(price, origin));
    }

    public static Optional<NonCashEffects.Bag> bag(Fields fields, CurrencyUnit currency, Origin origin) {
        return fields.child("bag").flatMap(entry -> Prices.amount(entry, "price", currency)
                .flatMap(price -> entry.number("pounds").filter(pounds -> pounds.signum() > 0)
                        .map(pounds -> new NonCashEffects.Bag(price, pounds, origin))));
    }

    public static Optional<NonCashEffects.Lives> lives(Fields fields, Origin origin) {
        return fields.child("lives").flatMap(entry -> entry.integer("cleaned")
                .flatMap(cleaned -> entry.integer("neglected").filter(neglected -> isShorter(entry, neglected, cleaned))
                        .map(neglected -> new NonCashEffects.Lives(cleaned, neglected, origin))));
    }

    private static boolean isShorter(Fields entry, int neglected, int cleaned) {
        if (neglected >= cleaned) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("neglected"),
                    "a neglected machine lasts " + neglected + " years, a cleaned one " + cleaned,
                    "fewer years than a cleaned one");
        }
        return neglected > 0 && neglected < cleaned;
    }
}
