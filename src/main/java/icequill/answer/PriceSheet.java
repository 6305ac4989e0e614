package icequill.answer;

import icequill.answer.price.VisitPrice;
import icequill.explain.ConstantKey;
import icequill.explain.Explanation;
import icequill.money.Amounts;
import icequill.party.Language;
import icequill.pricer.PricedLine;
import icequill.pricer.PricedVisit;
import icequill.pricer.SharedDiscount;
import icequill.pricer.UnitPrice;
import icequill.problem.Problem;
import icequill.render.words.Sentences;
import icequill.tax.TaxTotal;
import icequill.tax.TaxedVisit;
import icequill.visits.VisitContext;
import icequill.work.Outcome;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** A visit's price as texts in one language, and as JSON. What only the owner may see is left out unless asked for. */
public final class PriceSheet {

    private final TaxedVisit taxed;
    private final PricedVisit priced;
    private final CurrencyUnit currency;
    private final Sentences sentences;
    private final List<Problem> notices;

    public PriceSheet(VisitContext hand, Language language) {
        this.taxed = hand.taxed();
        this.priced = taxed.priced();
        this.currency = priced.currency();
        this.sentences = Sentences.of(language, hand.shop().address().country());
        this.notices = hand.notices();
    }

    /** What should be known about the price. */
    public List<Problem> notices() {
        return notices;
    }

    /** The heads of the table's columns. */
    public List<String> head(boolean owner) {
        List<String> keys = new ArrayList<>(List.of("line", "outcome", "quantity", "price", "net"));
        if (owner) {
            keys.addAll(List.of("cost", "margin"));
        }
        return keys.stream().map(key -> sentences.word("table." + key)).toList();
    }

    /** One row a line, as many cells as the head has. */
    public List<List<String>> rows(boolean owner) {
        List<List<String>> rows = new ArrayList<>();
        priced.lines().forEach(line -> rows.add(row(line, owner)));
        priced.discount().ifPresent(off -> {
            List<String> row = new ArrayList<>(
                    List.of(sentences.say(off.text()), "", "", "", plain(off.amount().negate())));
            if (owner) {
                row.addAll(List.of("", plain(off.amount().negate())));
            }
            rows.add(row);
        });
        return rows;
    }

    private List<String> row(PricedLine line, boolean owner) {
        List<String> row = new ArrayList<>(List.of(sentences.say(line.text()), outcome(line),
                line.unitPrice().isPresent() ? sentences.quantity(line.quantity()) : "",
                line.unitPrice().map(price -> plain(price.amount()) + sentences.each(price.per())).orElse(""),
                plain(line.net())));
        if (owner) {
            row.addAll(List.of(
                    line.cost().isKnown() ? plain(line.cost().amount()) : sentences.word("table.cost-not-known"),
                    line.margin().map(PriceSheet::plain).orElse("")));
        }
        return row;
    }

    private String outcome(PricedLine line) {
        return sentences.word("outcome." + ConstantKey.of(line.outcome()));
    }

    /** Net, taxes and total, and the owner's margin, as names and amounts. */
    public List<List<String>> sums(boolean owner) {
        List<List<String>> sums = new ArrayList<>();
        sums.add(List.of(sentences.word("total.net"), plain(priced.net())));
        taxes().forEach(tax -> sums.add(
                List.of(tax.percent().map(rate -> tax.name() + " " + rate.toPlainString() + " %").orElse(tax.name()),
                        plain(tax.amount()))));
        sums.add(
                List.of(sentences.word("total.gross") + " (" + currency.getCurrencyCode() + ")", plain(taxed.gross())));
        if (owner) {
            sums.add(List.of(sentences.word("table.cost"), plain(priced.cost())));
            if (!priced.withoutCost().isZero()) {
                sums.add(List.of(sentences.word("table.net-without-cost"), plain(priced.withoutCost())));
            }
            sums.add(List.of(sentences.word("table.margin"), plain(priced.margin())));
        }
        return sums;
    }

    /** How each amount was figured, as one works it out with pencil and paper, and why. */
    public List<String> explanations(boolean owner) {
        List<String> texts = new ArrayList<>();
        for (PricedLine line : priced.lines()) {
            texts.add(sentences.say(line.text()));
            texts.addAll(explained(line.how()));
            if (owner) {
                texts.addAll(explained(line.cost().how()));
            }
        }
        priced.discount().ifPresent(off -> {
            texts.add(sentences.say(off.text()));
            texts.addAll(explained(off.how()));
        });
        for (TaxTotal total : taxed.totals()) {
            texts.add(sentences.word("total.tax-sum"));
            texts.addAll(explained(total.how()));
        }
        taxed.remarks().forEach(remark -> texts.add(sentences.say(remark)));
        return texts;
    }

    private List<String> explained(Explanation how) {
        List<String> lines = new ArrayList<>();
        lines.add("    " + sentences.formula(how.figure()) + " = " + plain(how.amount(currency)));
        why(how).forEach(reason -> lines.add("    " + reason));
        return lines;
    }

    private List<String> why(Explanation how) {
        return how.reasons().stream().map(sentences::say).toList();
    }

    private List<LeviedTax> taxes() {
        return LeviedTax.of(taxed.totals(), sentences);
    }

    /** The price as data. */
    public VisitPrice data(boolean owner) {
        return new VisitPrice(
                Stream.concat(priced.lines().stream().map(line -> line(line, owner)),
                        priced.discount().stream().map(off -> discount(off, owner))).toList(),
                priced.net(), taxes().stream().map(this::tax).toList(), taxed.tax(), taxed.gross(),
                taxed.remarks().stream().map(sentences::say).toList(), notices, owners(priced.cost(), owner),
                owners(priced.margin(), owner),
                owners(priced.withoutCost(), owner).filter(net -> !net.isZero()));
    }

    private VisitPrice.Line line(PricedLine line, boolean owner) {
        Explanation cost = line.cost().how();
        return new VisitPrice.Line(ConstantKey.of(line.chargeClass()), line.outcome(), sentences.say(line.text()),
                line.quantity().number(), line.quantity().unit().symbol(), line.unitPrice().map(UnitPrice::amount),
                line.unitPrice().map(price -> price.per().symbol()), line.list(), line.allowance(), line.net(),
                line.how().text(currency), sentences.formula(line.how().figure()), why(line.how()),
                owners(line.cost().amount(), owner).filter(known -> line.cost().isKnown()),
                owners(cost.text(currency), owner), owners(why(cost), owner),
                line.margin().filter(margin -> owner));
    }

    private VisitPrice.Line discount(SharedDiscount off, boolean owner) {
        MonetaryAmount less = off.amount().negate();
        MonetaryAmount none = Amounts.zero(currency);
        return new VisitPrice.Line("discount", Outcome.CHARGED, sentences.say(off.text()), BigDecimal.ONE,
                Unit.EACH.symbol(), Optional.empty(), Optional.empty(), less, none, less,
                off.negatedHow().text(currency), sentences.formula(off.negatedHow().figure()), why(off.negatedHow()),
                owners(none, owner), Optional.empty(),
                Optional.empty(), owners(less, owner));
    }

    private static <T> Optional<T> owners(T figure, boolean owner) {
        return owner ? Optional.of(figure) : Optional.empty();
    }

    private VisitPrice.Tax tax(LeviedTax tax) {
        return new VisitPrice.Tax(tax.name(), tax.base(), tax.percent(), tax.amount(), tax.how().text(currency),
                sentences.formula(tax.how().figure()), why(tax.how()));
    }

    private static String plain(MonetaryAmount amount) {
        return Amounts.plain(amount);
    }
}
