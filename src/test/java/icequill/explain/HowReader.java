package icequill.explain;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Reads the printed grammar of explanations and works it out again. Written from the grammar's description alone: it shares
 * no code with the program. Values are fractions of two integers.
 */
public final class HowReader {

    private final String text;
    private int at;

    private HowReader(String text) {
        this.text = text;
    }

    /** A fraction; the denominator is positive. */
    record Value(BigInteger above, BigInteger below) {

        static Value of(BigDecimal number) {
            int scale = Math.max(0, number.scale());
            return new Value(number.movePointRight(scale).toBigIntegerExact(), BigInteger.TEN.pow(scale));
        }

        Value plus(Value other) {
            return new Value(above.multiply(other.below).add(other.above.multiply(below)), below.multiply(other.below));
        }

        Value times(Value other) {
            return new Value(above.multiply(other.above), below.multiply(other.below));
        }

        Value negated() {
            return new Value(above.negate(), below);
        }

        Value inverted() {
            BigInteger sign = BigInteger.valueOf(above.signum());
            return new Value(/* above= */ below.multiply(sign), /* below= */ above.abs());
        }

        BigDecimal halfUp(int digits) {
            return new BigDecimal(above).divide(new BigDecimal(below), digits, RoundingMode.HALF_UP);
        }
    }

    /** What the figure before the equals sign comes to. It must be a finite decimal. */
    public static BigDecimal evaluate(String how) {
        Value value = new HowReader(how.substring(0, how.lastIndexOf(" = "))).whole();
        return new BigDecimal(value.above).divide(new BigDecimal(value.below));
    }

    /** The number after the equals sign. */
    public static BigDecimal stated(String how) {
        return new BigDecimal(how.substring(how.lastIndexOf(" = ") + 3));
    }

    private Value whole() {
        Value value = figure();
        if (at != text.length()) {
            throw new IllegalArgumentException("not read to the end at " + at + ": " + text);
        }
        return value;
    }

    private Value figure() {
        Value value = term();
        while (true) {
            if (took(" + ")) {
                value = value.plus(term());
            } else if (took(" - ")) {
                value = value.plus(term().negated());
            } else {
                return value;
            }
        }
    }

    private Value term() {
        Value value = factor();
        while (true) {
            if (took(" x ")) {
                value = value.times(factor());
            } else if (took(" / ")) {
                value = value.times(factor().inverted());
            } else {
                return value;
            }
        }
    }

    private Value factor() {
        if (took("(")) {
            Value value = figure();
            need(")");
            return value;
        }
        if (took("round(")) {
            Value value = figure();
            need("; ");
            upTo(';');
            need("; ");
            int digits = Integer.parseInt(upTo(')'));
            need(")");
            return Value.of(value.halfUp(digits));
        }
        if (took("up(")) {
            Value value = figure();
            need("; ");
            BigDecimal step = new BigDecimal(upTo(')'));
            need(")");
            BigDecimal multiple = new BigDecimal(value.above)
                    .divide(new BigDecimal(value.below).multiply(step), 0, RoundingMode.CEILING);
            return Value.of(multiple.multiply(step));
        }
        if (took("step(")) {
            Value value = figure();
            need("; ");
            RoundingMode mode = upTo(';').equals("down") ? RoundingMode.FLOOR : RoundingMode.HALF_UP;
            need("; ");
            BigDecimal step = new BigDecimal(upTo(')'));
            need(")");
            BigDecimal multiple = new BigDecimal(value.above).divide(new BigDecimal(value.below).multiply(step), 0,
                    mode);
            return Value.of(multiple.multiply(step));
        }
        if (took("power(")) {
            Value value = figure();
            need("; ");
            int times = Integer.parseInt(upTo(')'));
            need(")");
            return new Value(value.above.pow(times), value.below.pow(times));
        }
        return took("share(") ? share() : number();
    }

    private Value share() {
        BigDecimal amount = new BigDecimal(upTo(';'));
        need("; ");
        List<BigDecimal> weights = Arrays.stream(upTo(';').split(" : ")).map(BigDecimal::new).toList();
        need("; ");
        int place = Integer.parseInt(upTo(';')) - 1;
        need("; ");
        int digits = Integer.parseInt(upTo(')'));
        need(")");
        BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal unit = BigDecimal.ONE.movePointLeft(digits);
        List<BigDecimal> floors = new ArrayList<>();
        List<BigDecimal> rests = new ArrayList<>();
        for (BigDecimal weight : weights) {
            BigDecimal[] parts = amount.multiply(weight).divideAndRemainder(sum.multiply(unit));
            floors.add(parts[0].multiply(unit));
            rests.add(parts[1]);
        }
        BigDecimal left = amount.subtract(floors.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparing(rests::get, Comparator.reverseOrder()));
        boolean rounded = order.indexOf(place) < left.divideToIntegralValue(unit).intValueExact();
        return Value.of(rounded ? floors.get(place).add(unit) : floors.get(place));
    }

    private Value number() {
        int start = at;
        took("-");
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        Value value = Value.of(new BigDecimal(text.substring(start, at)));
        if (at + 1 < text.length() && text.charAt(at) == ' ' && isUnit(text.charAt(at + 1))) {
            at++;
            int unit = at;
            while (at < text.length() && (isUnit(text.charAt(at)) || Character.isDigit(text.charAt(at)))) {
                at++;
            }
            // An "x" standing alone is the sign for times, and so is a slash.
            String label = text.substring(unit, at);
            if (label.equals("x") || label.equals("/")) {
                at = unit - 1;
            } else if (label.equals("%")) {
                return value.times(new Value(BigInteger.ONE, BigInteger.valueOf(100)));
            }
        }
        return value;
    }

    private static boolean isUnit(char letter) {
        return Character.isLetter(letter) || letter == '%' || letter == '/' || letter == '_';
    }

    private boolean took(String sign) {
        boolean found = text.startsWith(sign, at);
        at += found ? sign.length() : 0;
        return found;
    }

    private void need(String sign) {
        if (!took(sign)) {
            throw new IllegalArgumentException("\"" + sign + "\" expected at " + at + ": " + text);
        }
    }

    private String upTo(char end) {
        int start = at;
        at = text.indexOf(end, at);
        return text.substring(start, at);
    }
}
