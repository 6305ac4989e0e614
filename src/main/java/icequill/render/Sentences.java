package icequill.render;

import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Exact;
import icequill.money.Rounding;
import icequill.party.Language;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.Optional;

/** Says phrases and figures to a person, in the words and formats of a language and country. */
public final class Sentences {

    private final Formats formats;

    private Sentences(Formats formats) {
        this.formats = formats;
    }

    /**
     * Sentences for readers of a language.
     *
     * @param country ISO 3166-1 alpha-2 of the shop, by which numbers and dates are written
     */
    public static Sentences of(Language language, String country) {
        return new Sentences(Formats.of(language, country));
    }

    /** A word or fixed sentence by its key. */
    public String word(String key) {
        return formats.words().text(key);
    }

    /** The sentence under the phrase's key with its facts in place. */
    public String say(Phrase phrase) {
        String sentence = word(phrase.key());
        for (int i = 0; i < phrase.facts().size(); i++) {
            sentence = sentence.replace("{" + i + "}", fact(phrase.facts().get(i)));
        }
        return sentence;
    }

    /** The figure as arithmetic a customer can follow with pencil and paper; roundings are left to the result. */
    public String formula(Figure figure) {
        return switch (figure) {
        case Figure.Term term -> term(term);
        case Figure.Joined joined -> part(joined.left(), joined.operator(), false) + sign(joined.operator())
                + part(joined.right(), joined.operator(), true);
        case Figure.Rounded rounded -> formula(rounded.of());
        case Figure.RaisedTo raised ->
            formula(Figure.term(Rounding.halfUp(raised.exact(), raised.step().scale()), unit(raised.of())));
        case Figure.Share share -> word("formula.share").replace("{0}", formats.number(share.amount()));
        };
    }

    /** A quantity with its unit in words. */
    public String quantity(Quantity quantity) {
        return measure(quantity.number(), quantity.unit().symbol());
    }

    /** What follows a price, to say that it is for one of the unit: "/h". */
    public String each(Unit unit) {
        return word("each." + unit.symbol());
    }

    private String part(Figure part, Figure.Operator operator, boolean second) {
        Figure bare = part instanceof Figure.Rounded rounded ? rounded.of() : part;
        boolean sum = bare instanceof Figure.Joined joined
                && (joined.operator() == Figure.Operator.PLUS || joined.operator() == Figure.Operator.MINUS);
        boolean product = operator == Figure.Operator.TIMES || operator == Figure.Operator.OVER;
        boolean grouped = sum && (product || (second && operator == Figure.Operator.MINUS));
        return grouped ? "(" + formula(part) + ")" : formula(part);
    }

    private static String sign(Figure.Operator operator) {
        return switch (operator) {
        case PLUS -> " + ";
        case MINUS -> " − ";
        case TIMES -> " × ";
        case OVER -> " ÷ ";
        };
    }

    /** A price's currency is said once for the whole paper, so only what it is for is written. */
    private String term(Figure.Term term) {
        String unit = term.unit();
        int slash = unit.indexOf('/');
        String number = number(term.number());
        if (unit.equals("%")) {
            return number + "\u00a0%";
        }
        if (slash < 0) {
            return Unit.ofSymbol(unit).map(known -> measure(term.number(), unit)).orElse(number);
        }
        String per = unit.substring(slash + 1);
        return Unit.ofSymbol(unit.substring(0, slash)).isPresent()
                ? number
                : number + formats.words().find("each." + per).orElse("");
    }

    private String number(BigDecimal number) {
        return number.scale() > 0 ? fixed(number) : formats.number(number);
    }

    /** Prices keep the decimals they were written with. */
    private String fixed(BigDecimal number) {
        BigDecimal normal = Exact.normal(number);
        return formats.number(normal, Math.max(number.scale(), normal.scale()));
    }

    private String measure(BigDecimal number, String unit) {
        Optional<String> one = number.compareTo(BigDecimal.ONE) == 0
                ? formats.words().find("unit." + unit + ".one")
                : Optional.empty();
        String word = one.orElseGet(() -> word("unit." + unit));
        return word.isEmpty() ? formats.number(number) : formats.number(number) + "\u00a0" + word;
    }

    private static String unit(Figure figure) {
        return figure instanceof Figure.Term term ? term.unit() : "";
    }

    private String fact(Fact fact) {
        return switch (fact) {
        case Fact.Text text -> text.text();
        case Fact.Named named -> switch (formats.language()) {
        case ENGLISH -> named.english();
        case SPANISH -> named.spanish();
        };
        case Fact.Word word -> word(word.key());
        case Fact.Measure measure -> measure.unit().isEmpty()
                ? formats.number(measure.number())
                : measure(measure.number(), measure.unit());
        case Fact.Amount amount -> formats.amount(amount.amount());
        case Fact.Part part -> formats.number(part.percent().value()) + "\u00a0%";
        case Fact.Day day -> formats.day(day.date());
        case Fact.Time time -> formats.time(time.time());
        };
    }
}
