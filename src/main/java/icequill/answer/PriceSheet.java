package icequill.answer;

import icequill.explain.ConstantKey;
import icequill.explain.Explanation;
import icequill.money.Amounts;
import icequill.party.Language;
import icequill.pricer.PricedLine;
import icequill.pricer.PricedVisit;
import icequill.pricer.SharedDiscount;
import icequill.problem.Problem;
import icequill.render.words.Sentences;
import icequill.tax.TaxTotal;
import icequill.tax.TaxedVisit;
import icequill.visits.VisitContext;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
            row.addAll(List.of(plain(line.cost().amount()), plain(line.net().subtract(line.cost().amount()))));
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
            sums.add(List.of(sentences.word("table.margin"), plain(priced.net().subtract(priced.cost()))));
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

    /** The price as JSON; amounts are texts with the currency's decimals. */
    public Object data(boolean owner) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("currency", currency.getCurrencyCode());
        List<Map<String, Object>> lines = new ArrayList<>();
        priced.lines().forEach(line -> lines.add(line(line, owner)));
        priced.discount().ifPresent(off -> lines.add(discount(off, owner)));
        view.put("lines", lines);
        view.put("net", plain(priced.net()));
        view.put("taxes", taxes().stream().map(this::tax).toList());
        view.put("tax", plain(taxed.tax()));
        view.put("gross", plain(taxed.gross()));
        view.put("remarks", taxed.remarks().stream().map(sentences::say).toList());
        if (owner) {
            view.put("cost", plain(priced.cost()));
            view.put("margin", plain(priced.net().subtract(priced.cost())));
        }
        return view;
    }

    private Map<String, Object> line(PricedLine line, boolean owner) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("class", ConstantKey.of(line.chargeClass()));
        view.put("outcome", ConstantKey.of(line.outcome()));
        view.put("text", sentences.say(line.text()));
        view.put("quantity", line.quantity().number().toPlainString());
        view.put("unit", line.quantity().unit().symbol());
        view.put("unitPrice", line.unitPrice().map(price -> plain(price.amount())).orElse(""));
        line.unitPrice().ifPresent(price -> view.put("unitPricePer", price.per().symbol()));
        view.put("list", plain(line.list()));
        view.put("allowance", plain(line.allowance()));
        view.put("net", plain(line.net()));
        view.put("how", line.how().text(currency));
        view.put("why", why(line.how()));
        if (owner) {
            view.put("cost", plain(line.cost().amount()));
            view.put("costHow", line.cost().how().text(currency));
            view.put("costWhy", why(line.cost().how()));
            view.put("margin", plain(line.net().subtract(line.cost().amount())));
        }
        return view;
    }

    private Map<String, Object> discount(SharedDiscount off, boolean owner) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("class", "discount");
        view.put("outcome", "charged");
        view.put("text", sentences.say(off.text()));
        view.put("quantity", "1");
        view.put("unit", "ea");
        view.put("unitPrice", "");
        view.put("list", plain(off.amount().negate()));
        view.put("allowance", plain(Amounts.zero(currency)));
        view.put("net", plain(off.amount().negate()));
        view.put("how", off.negatedHow().text(currency));
        view.put("why", why(off.negatedHow()));
        if (owner) {
            view.put("cost", plain(Amounts.zero(currency)));
            view.put("margin", plain(off.amount().negate()));
        }
        return view;
    }

    private Map<String, Object> tax(LeviedTax tax) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("name", tax.name());
        view.put("base", plain(tax.base()));
        view.put("rate", tax.percent().map(BigDecimal::toPlainString).orElse("0"));
        view.put("amount", plain(tax.amount()));
        view.put("how", tax.how().text(currency));
        view.put("why", why(tax.how()));
        return view;
    }

    private static String plain(MonetaryAmount amount) {
        return Amounts.plain(amount);
    }
}
