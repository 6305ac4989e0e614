package icequill.oracle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Taxes lines at one place by the rules as they are written; every class there is taxed at one rate. */
record TaxOracle(Yaml place, boolean byItem, String certificate) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** @param off a discount on the whole, shared over what is charged */
    BigDecimal tax(List<PriceOracle.Line> lines, BigDecimal off) {
        List<BigDecimal> shares = shares(lines, off);
        List<BigDecimal> whole = new ArrayList<>();
        List<BigDecimal> part = new ArrayList<>();
        BigDecimal freed = BigDecimal.ZERO;
        for (int i = 0; i < lines.size(); i++) {
            BigDecimal base = lines.get(i).net().subtract(shares.get(i));
            boolean isHeld = !certificate.isEmpty();
            Yaml relief = isHeld && place.has("exemptions") && place.child("exemptions").has(certificate)
                    ? place.child("exemptions").child(certificate)
                    : new Yaml(Map.of());
            boolean isReached = isHeld
                    && (!relief.has("classes") || relief.texts("classes").contains(lines.get(i).on()));
            freed = relief.maybe("percent").orElse(HUNDRED);
            if (!isReached) {
                whole.add(base);
            } else if (freed.compareTo(HUNDRED) < 0) {
                part.add(base);
            }
        }
        return sum(whole, HUNDRED).add(sum(part, HUNDRED.subtract(freed)));
    }

    private BigDecimal sum(List<BigDecimal> bases, BigDecimal percentTaxed) {
        List<BigDecimal> exact = bases.stream().map(base -> exact(base, percentTaxed)).toList();
        return byItem
                ? exact.stream().map(TaxOracle::cents).reduce(BigDecimal.ZERO, BigDecimal::add)
                : cents(exact.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** Each authority takes its percentage of what it taxes of the line. */
    private BigDecimal exact(BigDecimal base, BigDecimal percentTaxed) {
        BigDecimal size = base.abs();
        BigDecimal tax = BigDecimal.ZERO;
        for (Yaml component : place.named("rates", "sales").list("components")) {
            BigDecimal taxed = cents(size.multiply(percentTaxed).divide(HUNDRED));
            BigDecimal capped = component.has("cap") ? taxed.min(component.number("cap")) : taxed;
            tax = tax.add(capped.multiply(component.number("percent")).divide(HUNDRED));
        }
        return base.signum() < 0 ? tax.negate() : tax;
    }

    /** Cent by cent: cut down first, the cents left over to the largest cut-off parts. */
    private static List<BigDecimal> shares(List<PriceOracle.Line> lines, BigDecimal off) {
        List<BigDecimal> weights = lines.stream().map(line -> line.net().max(BigDecimal.ZERO)).toList();
        BigDecimal all = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (all.signum() == 0 || off.signum() == 0) {
            return lines.stream().map(line -> BigDecimal.ZERO).toList();
        }
        List<BigDecimal> cut = new ArrayList<>();
        List<BigDecimal> rest = new ArrayList<>();
        for (BigDecimal weight : weights) {
            BigDecimal[] parts = off.movePointRight(2).multiply(weight).divideAndRemainder(all);
            cut.add(parts[0].movePointLeft(2));
            rest.add(parts[1]);
        }
        BigDecimal left = off.subtract(cut.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        List<Integer> order = IntStream.range(0, cut.size()).boxed()
                .sorted(Comparator.comparing((Integer i) -> rest.get(i)).reversed().thenComparing(i -> i)).toList();
        for (int i = 0; i < left.movePointRight(2).intValueExact(); i++) {
            cut.set(order.get(i), cut.get(order.get(i)).add(new BigDecimal("0.01")));
        }
        return cut;
    }

    private static BigDecimal cents(BigDecimal exact) {
        return exact.setScale(2, RoundingMode.HALF_UP);
    }
}
