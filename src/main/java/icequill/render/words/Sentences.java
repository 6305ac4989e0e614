package icequill.render.words;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Exact;
import icequill.money.Rounding;
import icequill.party.Language;
import icequill.party.Wording;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Says phrases and figures to a person, in the words and formats of a language and country. */
public final class Sentences {

    private static final Pattern PLACE = Pattern.compile("\\{([0-9])\\}");

    private static final int HOUR = 60;

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
        return word(phrase.key(), phrase.facts().stream().map(this::fact).toArray(String[]::new));
    }

    /** The sentence under a key with details in its places {0}, {1} and so on; a place within a detail is left alone. */
    public String word(String key, String... details) {
        return PLACE.matcher(word(key))
                .replaceAll(place -> Matcher.quoteReplacement(details[Integer.parseInt(place.group(1))]));
    }

    /** What the shop calls a thing, in the language of the reader. */
    public String in(Wording wording) {
        return wording.in(formats.language());
    }

    /** Names in the rates are written small, as within a sentence; this begins one. Empty stays empty. */
    public static String capitalized(String text) {
        int first = text.isEmpty() ? 0 : text.offsetByCodePoints(0, 1);
        return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
    }

    public Formats formats() {
        return formats;
    }

    /** The figure as arithmetic a customer can follow with pencil and paper; roundings are left to the result. */
    public String formula(Figure figure) {
        return switch (figure) {
        case Figure.Term term -> term(term);
        case Figure.Joined joined -> part(joined.left(), joined.operator(), false) + sign(joined.operator())
                + part(joined.right(), joined.operator(), true);
        case Figure.Rounded rounded -> formula(rounded.of());
        case Figure.Stepped stepped -> formula(stepped.of());
        case Figure.RaisedTo raised ->
            formula(Figure.term(Rounding.halfUp(raised.exact(), raised.step().scale()), unit(raised.of())));
        case Figure.Power power -> word("formula.power", formula(power.of()), Integer.toString(power.times()));
        case Figure.Share share -> word("formula.share", number(share.amount()));
        };
    }

    /** A quantity with its unit in words. */
    public String quantity(Quantity quantity) {
        return measure(quantity.number(), quantity.unit().symbol());
    }

    /** Minutes as hours and minutes. */
    public String duration(int minutes) {
        String rest = measure(BigDecimal.valueOf(minutes % HOUR), "min");
        String hours = measure(BigDecimal.valueOf(minutes / HOUR), "h");
        return minutes < HOUR ? rest : minutes % HOUR == 0 ? hours : hours + "\u00a0" + rest;
    }

    /** An explanation's arithmetic and reasons. A bare amount explains nothing, so it is not said twice. */
    public String how(Explanation how, MonetaryAmount amount) {
        String formula = formula(how.figure());
        return capitalized(Stream
                .concat(Stream.of(formula).filter(text -> !text.equals(formats.amount(amount))),
                        how.reasons().stream().map(this::say))
                .collect(Collectors.joining("; ")));
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
        if (unit.equals("%")) {
            return formats.percent(term.number());
        }
        String number = number(term.number());
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
        Optional<String> one = isOne(number)
                ? formats.words().find("unit." + unit + ".one")
                : Optional.empty();
        String word = one.orElseGet(() -> word("unit." + unit));
        return word.isEmpty() ? formats.number(number) : formats.number(number) + "\u00a0" + word;
    }

    /** Exactly one, or what the language counts like it: French says the singular of all that is below two (Unicode CLDR). */
    private boolean isOne(BigDecimal number) {
        return number.compareTo(BigDecimal.ONE) == 0 || formats.words().find("plural.one-below").map(BigDecimal::new)
                .filter(limit -> number.abs().compareTo(limit) < 0).isPresent();
    }

    private static String unit(Figure figure) {
        return figure instanceof Figure.Term term ? term.unit() : "";
    }

    private String fact(Fact fact) {
        return switch (fact) {
        case Fact.Text text -> text.text();
        case Fact.Named named -> in(new Wording(named.english(), named.spanish(), named.others()));
        case Fact.Word word -> word(word.key());
        case Fact.Measure measure -> measure.unit().isEmpty()
                ? formats.number(measure.number())
                : measure(measure.number(), measure.unit());
        case Fact.Amount amount -> formats.amount(amount.amount());
        case Fact.Part part -> formats.percent(part.percent().value());
        case Fact.Day day -> formats.day(day.date());
        case Fact.Time time -> formats.time(time.time());
        case Fact.Several several -> several.facts().stream().map(this::fact).collect(Collectors.joining(", "));
        };
    }
}
