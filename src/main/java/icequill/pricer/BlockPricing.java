package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Rounding;
import icequill.work.Band;
import icequill.work.Block;
import icequill.work.ChargeClass;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Draws a visit down from what was sold ahead at its site, the oldest first. What a block takes stands in the reasons of the lines, by
 * which {@link #used} finds it again in an invoice. For one visit.
 */
public final class BlockPricing {

    private static final String DRAWN = "reason.block-drawn";
    /** Where the reason names the sale, and what was taken. */
    private static final int SALE_AT = 2;
    private static final int UNITS_AT = 3;

    private final List<Block.Held> blocks;
    private final CurrencyUnit currency;

    BlockPricing(ResolvedVisit bound) {
        this.blocks = new ArrayList<>(bound.visit().terms().blocks().stream()
                .filter(held -> held.isFor(bound.visit().day())).toList());
        this.currency = bound.rates().currency();
    }

    /**
     * Minutes of one kind, or the rest of them.
     *
     * @param drawn empty where they are to be paid
     */
    record Part(long minutes, Optional<Drawn> drawn) {}

    /** What a line of an invoice took from blocks. */
    public record Used(String sale, BigDecimal units) {}

    /** What a line took, as its explanation tells. */
    public static Stream<Used> used(Explanation how) {
        return how.reasons().stream().filter(reason -> reason.key().equals(DRAWN))
                .flatMap(reason -> reason.facts().get(SALE_AT) instanceof Fact.Text(String sale)
                        && reason.facts().get(UNITS_AT) instanceof Fact.Measure(BigDecimal units, String unit)
                                ? Stream.of(new Used(sale, units))
                                : Stream.empty());
    }

    /** Whether a line sells something ahead. */
    public static boolean isSale(Phrase text) {
        return text.key().equals(Drawn.SALE);
    }

    /** What was sold, and until when it is to be used. */
    static List<Phrase> sold(Block block) {
        List<Phrase> reasons = new ArrayList<>();
        reasons.add(Phrase.of("reason.block-sold", Fact.number(block.count(), block.of().unit().symbol()),
                new Fact.Several(block.on().stream().map(ChargeClass::word).toList())));
        block.until().ifPresent(day -> reasons.add(Phrase.of("reason.block-until", new Fact.Day(day))));
        return reasons;
    }

    /** The minutes that blocks pay for, block by block, and those that are left to pay. */
    List<Part> minutes(ChargeClass on, Band band, long minutes) {
        List<Part> parts = new ArrayList<>();
        long left = minutes;
        for (int i = 0; i < blocks.size() && left > 0; i++) {
            Block.Held held = blocks.get(i);
            if (held.block().of() == Block.Of.MINUTES && held.block().on().contains(on)) {
                long covered = held.left().divideToIntegralValue(held.block().factor(band))
                        .min(BigDecimal.valueOf(left)).longValueExact();
                if (covered > 0) {
                    parts.add(new Part(covered, Optional.of(draw(i, covered, band))));
                    left -= covered;
                }
            }
        }
        if (left > 0 || parts.isEmpty()) {
            parts.add(new Part(left, Optional.empty()));
        }
        return parts;
    }

    /** The charges, those of a block's classes paid for by one visit of it. */
    List<Charge> visits(List<Charge> charges, Band arrival) {
        List<Charge> paid = charges;
        for (int i = 0; i < blocks.size(); i++) {
            Block.Held held = blocks.get(i);
            if (held.block().of() == Block.Of.VISITS && held.left().compareTo(held.block().factor(arrival)) >= 0
                    && paid.stream().anyMatch(charge -> isPaidBy(held, charge))) {
                paid = paidBy(held, draw(i, 1, arrival), paid);
            }
        }
        return paid;
    }

    private List<Charge> paidBy(Block.Held held, Drawn drawn, List<Charge> charges) {
        Drawn further = new Drawn(
                List.of(Phrase.of("reason.block-same-visit", new Fact.Text(held.text()), new Fact.Text(held.sale()))),
                Explanation.of(Figure.term(0, "")), Optional.empty());
        boolean first = true;
        List<Charge> paid = new ArrayList<>();
        for (Charge charge : charges) {
            boolean mine = isPaidBy(held, charge);
            paid.add(mine ? charge.paidBy(first ? drawn : further) : charge);
            first = first && !mine;
        }
        return paid;
    }

    private static boolean isPaidBy(Block.Held held, Charge charge) {
        return charge.outcome().isCharged() && charge.drawn().isEmpty() && !isSale(charge.text())
                && charge.list().exact().signum() > 0 && held.block().on().contains(charge.chargeClass());
    }

    private Drawn draw(int index, long number, Band band) {
        Block.Held before = blocks.get(index);
        Block block = before.block();
        BigDecimal factor = block.factor(band);
        BigDecimal units = factor.multiply(BigDecimal.valueOf(number));
        Block.Held after = before.less(units);
        blocks.set(index, after);
        Figure upTo = worth(after);
        Explanation value = Explanation.of(before.used().signum() > 0 ? upTo.minus(worth(before)) : upTo);
        MonetaryAmount worth = value.amount(currency);
        Fact sale = new Fact.Text(before.sale());
        Fact sold = new Fact.Day(before.sold());
        List<Phrase> why = new ArrayList<>();
        if (factor.compareTo(BigDecimal.ONE) != 0) {
            why.add(Phrase.of("reason.block-factor", measure(block, BigDecimal.valueOf(number)),
                    new Fact.Measure(factor, ""), Names.of(band.name())));
        }
        why.add(Phrase.of(DRAWN, new Fact.Text(before.text()), sold, sale, measure(block, units),
                measure(block, BigDecimal.valueOf(block.count())), new Fact.Amount(before.paid()),
                new Fact.Amount(worth), measure(block, after.left())));
        return new Drawn(why, value, before.atUse() ? Optional.of(new Drawn.Sale(sold, sale)) : Optional.empty());
    }

    /** What is used so far, so that all of it comes to what was paid. */
    private Figure worth(Block.Held held) {
        return Figure.price(held.paid(), "").times(Figure.term(held.used(), ""))
                .over(Figure.term(held.block().count(), "")).rounded(Rounding.PAID_AHEAD, currency);
    }

    private static Fact measure(Block block, BigDecimal number) {
        return new Fact.Measure(number, block.of().unit().symbol());
    }

    /** What is taxed now because it was not when it was sold: its value, and the same taken off again. */
    static List<PricedLine> taxedNow(List<Charge> charges, CurrencyUnit currency) {
        return charges.stream().flatMap(charge -> charge.drawn().stream().flatMap(drawn -> drawn.taxed().stream()
                .flatMap(sale -> taxedNow(charge.chargeClass(), drawn.value(), sale, currency))))
                .toList();
    }

    private static Stream<PricedLine> taxedNow(ChargeClass on, Explanation value, Drawn.Sale sale,
            CurrencyUnit currency) {
        return Stream.of(
                PricedLine.bare(on, Phrase.of(Drawn.TAXED, sale.sold(), sale.form()), value, currency),
                PricedLine.bare(on, Phrase.of(Drawn.PAID, sale.sold(), sale.form()),
                        Explanation.of(Figure.term(0, "").minus(Figure.price(value.amount(currency), ""))), currency));
    }
}
