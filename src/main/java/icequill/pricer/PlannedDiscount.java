package icequill.pricer;

import icequill.agreement.QuantityDiscounts;
import icequill.agreement.Reach;
import icequill.agreement.Tier;
import icequill.explain.ConstantKey;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.rates.ClassDiscount;
import icequill.work.ChargeClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What is off the planned visits of a year: of the tier's discount, of that for much that is looked after, and of those of rate
 * sheets the best for the customer, never two.
 *
 * @param off rounded
 * @param label of the line on which it stands
 * @param reasons empty where nothing is off
 */
record PlannedDiscount(Figure off, Phrase label, List<Phrase> reasons) {

    /** All discounts that could be had for visits at list. */
    record Offered(Tier tier, Reach reach, List<ClassDiscount> sheets, CurrencyUnit currency) {

        /** @param list all visits together */
        PlannedDiscount best(List<PricedSlot> slots, MonetaryAmount list) {
            List<PlannedDiscount> all = new ArrayList<>();
            if (!tier.discount().isZero()) {
                all.add(tiers(list));
            }
            tier.quantity().flatMap(table -> table.best(reach)).map(row -> byNumber(row, list)).ifPresent(all::add);
            bySheets(slots).ifPresent(all::add);
            PlannedDiscount best = all.stream().reduce((one, other) -> other.isMoreThan(one) ? other : one)
                    .orElseGet(() -> new PlannedDiscount(Figure.term(0, ""), Phrase.of("plan.discount",
                            new Fact.Part(Percent.ZERO)), List.of()));
            return all.size() < 2 ? best : best.because(Phrase.of("reason.best-discount"));
        }

        private PlannedDiscount tiers(MonetaryAmount list) {
            Fact percent = new Fact.Part(tier.discount());
            return new PlannedDiscount(part(tier.discount(), list), Phrase.of("plan.discount", percent),
                    List.of(Phrase.of("reason.tier-discount", Names.of(tier.name()), percent)));
        }

        private PlannedDiscount byNumber(QuantityDiscounts.Row row, MonetaryAmount list) {
            String counted = ConstantKey.of(row.counted());
            Fact percent = new Fact.Part(row.percent());
            Fact number = Fact.number(row.count(reach), "");
            return new PlannedDiscount(part(row.percent(), list),
                    Phrase.of("plan.discount-" + counted, percent, number),
                    List.of(Phrase.of("reason.discount-" + counted, percent, number, Fact.number(row.from(), ""))));
        }

        /** Class by class; the lines of one percentage are rounded together. Empty where no sheet takes anything off. */
        private Optional<PlannedDiscount> bySheets(List<PricedSlot> slots) {
            Map<Percent, Figure> byPercent = new TreeMap<>((one, other) -> other.value().compareTo(one.value()));
            slots.stream().flatMap(slot -> slot.priced().lines().stream())
                    .filter(line -> !of(line.chargeClass()).isZero())
                    .forEach(line -> byPercent.merge(of(line.chargeClass()), Figure.price(line.list(), ""),
                            Figure::plus));
            return byPercent.entrySet().stream()
                    .map(entry -> Figure.percent(entry.getKey())
                            .times(Figure.price(new Explanation(entry.getValue(), List.of()).amount(currency), ""))
                            .rounded(Rounding.ALLOWANCE, currency))
                    .reduce(Figure::plus)
                    .map(off -> new PlannedDiscount(off, Phrase.of("plan.discount-sheet", sheet()),
                            List.of(Phrase.of("reason.discount-sheet", sheet()))));
        }

        private Fact sheet() {
            return Names.of(sheets.getFirst().name());
        }

        private Percent of(ChargeClass chargeClass) {
            return sheets.stream().map(sheet -> sheet.of(chargeClass)).filter(percent -> !percent.isZero()).findFirst()
                    .orElse(Percent.ZERO);
        }

        private Figure part(Percent percent, MonetaryAmount list) {
            return Figure.percent(percent).times(Figure.price(list, "")).rounded(Rounding.ALLOWANCE, currency);
        }
    }

    PlannedDiscount {
        reasons = List.copyOf(reasons);
    }

    boolean isNone() {
        return reasons.isEmpty();
    }

    private boolean isMoreThan(PlannedDiscount other) {
        return off.exact().compareTo(other.off.exact()) > 0;
    }

    private PlannedDiscount because(Phrase reason) {
        List<Phrase> all = new ArrayList<>(reasons);
        all.add(reason);
        return new PlannedDiscount(off, label, all);
    }
}
