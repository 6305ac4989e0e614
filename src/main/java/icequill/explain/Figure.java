package icequill.explain;

import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.money.Shares;
import icequill.money.Stepping;
import icequill.problem.Check;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A computation that both gives a number and shows how. Prices are computed by their figures, so what is printed cannot
 * differ from what is charged. {@link #text} writes the grammar that stands in the package's description.
 */
public sealed interface Figure {

    /** The exact value. */
    BigFraction exact();

    /** The grammar's text. */
    String text();

    /**
     * A given number.
     *
     * @param unit a label such as {@code min} or {@code USD/h}; {@code %} divides by a hundred; empty for a bare number
     */
    record Term(BigDecimal number, String unit) implements Figure {
        public Term {
            number = plain(number);
            Check.that(unit.matches("%|[A-Za-z0-9/_]*"), "not a unit: " + unit);
        }

        @Override
        public BigFraction exact() {
            BigFraction value = Exact.of(number);
            return unit.equals("%") ? value.divide(100) : value;
        }

        @Override
        public String text() {
            return unit.isEmpty() ? number.toPlainString() : number.toPlainString() + " " + unit;
        }

        static BigDecimal plain(BigDecimal number) {
            return number.scale() < 0 ? Exact.normal(number) : number;
        }
    }

    /** The left figure and the right one added, subtracted, multiplied or divided. */
    record Joined(Figure left, Operator operator, Figure right) implements Figure {
        @Override
        public BigFraction exact() {
            return switch (operator) {
            case PLUS -> left.exact().add(right.exact());
            case MINUS -> left.exact().subtract(right.exact());
            case TIMES -> left.exact().multiply(right.exact());
            case OVER -> left.exact().divide(right.exact());
            };
        }

        @Override
        public String text() {
            return grouped(left, false) + operator.sign() + grouped(right, true);
        }

        private String grouped(Figure part, boolean second) {
            boolean needed = part instanceof Joined joined && (joined.operator.rank() < operator.rank()
                    || (second && joined.operator.rank() == operator.rank()));
            return needed ? "(" + part.text() + ")" : part.text();
        }
    }

    /** A figure rounded half away from zero. */
    record Rounded(Figure of, Rounding rounding, int decimals) implements Figure {
        @Override
        public BigFraction exact() {
            return Exact.of(Rounding.halfUp(of.exact(), decimals));
        }

        @Override
        public String text() {
            return "round(" + of.text() + "; " + ConstantKey.of(rounding) + "; " + decimals + ")";
        }
    }

    /** A figure raised to the next full multiple of a step. */
    record RaisedTo(Figure of, BigDecimal step) implements Figure {
        @Override
        public BigFraction exact() {
            return Exact.upToMultiple(of.exact(), step);
        }

        @Override
        public String text() {
            return "up(" + of.text() + "; " + step.toPlainString() + ")";
        }
    }

    /** A figure rounded to a full multiple of a price step. */
    record Stepped(Figure of, Stepping stepping, BigDecimal step) implements Figure {
        @Override
        public BigFraction exact() {
            return stepping.to(of.exact(), step);
        }

        @Override
        public String text() {
            return "step(" + of.text() + "; " + ConstantKey.of(stepping) + "; " + step.toPlainString()
                    + ")";
        }
    }

    /** A figure multiplied by itself: growth over so many years. */
    record Power(Figure of, int times) implements Figure {
        public Power {
            Check.that(times >= 0, "a power of " + times);
        }

        @Override
        public BigFraction exact() {
            return of.exact().pow(times);
        }

        @Override
        public String text() {
            return "power(" + of.text() + "; " + times + ")";
        }
    }

    /**
     * One share of an amount divided by largest remainder.
     *
     * @param index of the weight, from 0
     */
    record Share(BigDecimal amount, List<BigDecimal> weights, int index, int decimals) implements Figure {
        public Share {
            weights = weights.stream().map(Term::plain).toList();
        }

        @Override
        public BigFraction exact() {
            return Exact.of(Shares.byLargestRemainder(amount, weights, decimals).get(index));
        }

        @Override
        public String text() {
            String all = weights.stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" : "));
            return "share(" + amount.toPlainString() + "; " + all + "; " + (index + 1) + "; " + decimals + ")";
        }
    }

    /** What joins two figures. */
    enum Operator {
        PLUS(" + ", 0), MINUS(" - ", 0), TIMES(" x ", 1), OVER(" / ", 1);

        private final String sign;
        private final int rank;

        Operator(String sign, int rank) {
            this.sign = sign;
            this.rank = rank;
        }

        String sign() {
            return sign;
        }

        int rank() {
            return rank;
        }
    }

    static Figure term(BigDecimal number, String unit) {
        return new Term(number, unit);
    }

    /** An amount, written with its currency's decimals; {@code per} is empty or a unit such as {@code h}. */
    static Figure price(MonetaryAmount amount, String per) {
        String code = amount.getCurrency().getCurrencyCode();
        return new Term(new BigDecimal(Amounts.plain(amount)), per.isEmpty() ? code : code + "/" + per);
    }

    static Figure percent(Percent percent) {
        return new Term(percent.value(), "%");
    }

    static Figure term(long number, String unit) {
        return new Term(BigDecimal.valueOf(number), unit);
    }

    /** Rounds to what the currency asks of this rounding. */
    default Figure rounded(Rounding rounding, CurrencyUnit currency) {
        return new Rounded(this, rounding, rounding.decimals(currency));
    }

    /** Rounds to a price step, which must be positive. */
    default Figure stepped(Stepping stepping, MonetaryAmount step) {
        return new Stepped(this, stepping, new BigDecimal(Amounts.plain(step)));
    }

    default Figure plus(Figure other) {
        return new Joined(this, Operator.PLUS, other);
    }

    default Figure minus(Figure other) {
        return new Joined(this, Operator.MINUS, other);
    }

    default Figure times(Figure other) {
        return new Joined(this, Operator.TIMES, other);
    }

    default Figure over(Figure other) {
        return new Joined(this, Operator.OVER, other);
    }
}
