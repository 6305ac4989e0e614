package icequill.render.view;

import icequill.document.CareOptionKind;
import icequill.document.CareOptionScope;
import icequill.document.Outlook;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.forecast.ChanceInTen;
import icequill.forecast.ChancesPerTenSites;
import icequill.money.Amounts;
import icequill.party.Wording;
import icequill.render.drawing.Drawn;
import icequill.render.drawing.MachinesSketch;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** What to expect of each way of care as texts and drawings, ready for {@code parts/outlook.ftlh}. */
record OutlookView(Outlook outlook, Sentences sentences) {

    /** What a text takes besides its letters, in letters: the rest of its last line. */
    private static final int LAST_LINE = 30;

    /**
     * The whole outlook.
     *
     * @param answer sentences below the headline
     * @param pictures of the first and the last way
     * @param inputs in two columns
     */
    record Ahead(String headline, List<String> answer, List<Kind> legend, List<Pictured> pictures, List<Row> rows,
            String besideHead, String yearNote, String later, List<Way> ways, List<Beside> beside,
            List<List<Input>> inputs, String reasons)
            implements
            Texts {}

    record Kind(Drawn picture, String text) implements Texts {}

    record Pictured(String name, Drawn picture, String sites) implements Texts {}

    /**
     * A year of one way.
     *
     * @param parts of what it costs beside its charges; may be empty
     * @param isNeglect whether nobody cleans
     */
    record Row(String name, String calls, String planned, String charges, String cash, String beside, String parts,
            String all, boolean isNeglect)
            implements
            Texts {}

    /**
     * One way over the years.
     *
     * @param often how often it is just what is planned; may be empty, like those that compare
     */
    record Way(String name, Drawn picture, String sites, String gets, String first, String laterRange, String often,
            String laterOften, String laterMean, String cheaper, String laterCheaper)
            implements
            Texts {}

    record Beside(String what, String howMuch, String origin) implements Texts {}

    record Input(String what, String origin) implements Texts {
        static Input of(Outlook.Input input, Sentences sentences) {
            return new Input(Sentences.capitalized(sentences.say(input.what())),
                    Sentences.capitalized(sentences.say(input.origin())));
        }
    }

    Ahead ahead() {
        List<Input> inputs = outlook.inputs().stream().map(input -> Input.of(input, sentences)).toList();
        int half = half(inputs.stream().map(input -> input.what().length() + input.origin().length()).toList());
        return new Ahead(say(outlook.answer().getFirst()), outlook.answer().stream().skip(1).map(this::say).toList(),
                legend(), Stream.of(ordered().getFirst(), ordered().getLast()).map(this::picture).toList(),
                ordered().stream().map(this::row).toList(),
                sentences.word("outlook.beside-head." + Outlook.dirtCosts(outlook.ways())),
                sentences.word(isOwn() ? "outlook.year-note-own" : "outlook.year-note"),
                sentences.word("outlook.over-years", String.valueOf(outlook.years())),
                ordered().stream().map(this::way).toList(), outlook.beside().stream().map(this::beside).toList(),
                List.of(inputs.subList(0, half), inputs.subList(half, inputs.size())),
                Sentences.capitalized(
                        outlook.reasons().stream().map(sentences::say).collect(Collectors.joining("; "))));
    }

    /** The recommended plan first, paying per call last. */
    private List<Outlook.Way> ordered() {
        return outlook.ways().stream().sorted(Comparator.comparingInt(this::place)).toList();
    }

    private int place(Outlook.Way way) {
        return switch (way.kind()) {
        case AGREEMENT -> way.name().filter(outlook.recommended()::equals).isPresent() ? 0 : 2;
        case BOOKED_SINGLY -> 1;
        case INTERVAL -> 3;
        case PAY_PER_CALL -> 4;
        };
    }

    private Pictured picture(Outlook.Way way) {
        return new Pictured(name(way),
                MachinesSketch.large(way.sites(), sentences.word("outlook.sites-text", counts(way))), counts(way));
    }

    private Row row(Outlook.Way way) {
        Outlook.ExpectedYear year = way.year();
        return new Row(name(way), sentences.formats().number(way.calls(), 1),
                year.planned().isZero() ? "–" : sentences.formats().amount(year.planned()), amount(year.calls()),
                sum(year.cash()), year.beside().sum().isZero() ? "–" : amount(year.beside().sum()),
                Stream.of(year.beside().stops(), year.beside().electricity(), year.beside().wear())
                        .filter(part -> !part.isZero()).map(this::amount).collect(Collectors.joining(" + ")),
                sum(year.all()), way.kind() == CareOptionKind.PAY_PER_CALL);
    }

    private boolean isOwn() {
        return outlook.ways().stream().anyMatch(way -> way.withOwnCosts().isPresent());
    }

    /** A sum of a price to the cent and a round amount; without decimals where it has none. */
    private String sum(MonetaryAmount amount) {
        return Amounts.number(amount).stripTrailingZeros().scale() > 0
                ? sentences.formats().amount(amount)
                : amount(amount);
    }

    private String name(Outlook.Way way) {
        return Sentences.capitalized(
                sentences.word("outlook.way." + ConstantKey.of(way.kind()), way.name().map(this::in).orElse("")));
    }

    private String counts(Outlook.Way way) {
        ChancesPerTenSites sites = way.sites();
        return sentences.word("outlook.sites", String.valueOf(sites.none()), String.valueOf(sites.one()),
                String.valueOf(sites.more()));
    }

    private List<Kind> legend() {
        return List.of(new Kind(MachinesSketch.quietOne(""), sentences.word("outlook.legend.none")),
                new Kind(MachinesSketch.hatchedOne(""), sentences.word("outlook.legend.one")),
                new Kind(MachinesSketch.darkOne(""), sentences.word("outlook.legend.more")));
    }

    private Way way(Outlook.Way way) {
        return new Way(name(way), MachinesSketch.of(way.sites(), sentences.word("outlook.sites-text", counts(way))),
                counts(way), gets(way.scope()), range(way.first()), range(way.later()), planned(way.first()),
                planned(way.later()), sentences.word("outlook.mean", amount(way.later().mean())),
                way.cheaperFirst().map(this::cheaper).orElse(""), way.cheaperLater().map(this::cheaper).orElse(""));
    }

    private String gets(CareOptionScope scope) {
        List<Phrase> parts = new ArrayList<>();
        if (scope.visits() == 0) {
            parts.add(Phrase.of("outlook.gets.nothing"));
        } else {
            parts.add(Phrase.of("outlook.gets.visits", Fact.number(scope.visits(), "visit"),
                    Fact.number(scope.fullCleanings(), "")));
            parts.add(scope.filters()
                    .map(changed -> Phrase.of("outlook.gets.filters", Fact.number(changed, "")))
                    .orElseGet(() -> Phrase.of("outlook.gets.filters-in-part")));
            parts.add(Phrase.of("outlook.gets.readings", Fact.number(scope.readings(), "")));
        }
        parts.add(scope.catchUp().isZero()
                ? Phrase.of("outlook.gets.no-catch-up")
                : Phrase.of("outlook.gets.catch-up", new Fact.Amount(scope.catchUp())));
        parts.add(scope.includedCalls() > 0
                ? Phrase.of("outlook.gets.included", Fact.number(scope.includedCalls(), "call"))
                : Phrase.of(scope.doCallsClean() ? "outlook.gets.calls-clean" : "outlook.gets.calls-restart"));
        return parts.stream().map(sentences::say).collect(Collectors.joining("; ")) + ".";
    }

    private String cheaper(ChanceInTen chance) {
        return switch (chance.than()) {
        case LESS -> sentences.word("outlook.cheaper.never");
        case MORE -> sentences.word("outlook.cheaper.always");
        case ABOUT -> sentences.word("outlook.cheaper", String.valueOf(chance.tenths()));
        };
    }

    private String in(Wording wording) {
        return sentences.in(wording);
    }

    private String range(Outlook.Span span) {
        return span.low().equals(span.high())
                ? amount(span.low())
                : sentences.word("outlook.range", amount(span.low()), amount(span.high()));
    }

    /** How often it is just what is planned. */
    private String planned(Outlook.Span span) {
        return span.planned().map(tenths -> sentences.word("outlook.range-planned", sentences.word(
                "outlook.in-ten." + ConstantKey.of(tenths.than()), String.valueOf(tenths.tenths()))))
                .orElse("");
    }

    private Beside beside(Outlook.Beside row) {
        return new Beside(say(row.what()), say(row.howMuch()), say(row.origin()));
    }

    private String say(Phrase phrase) {
        return Sentences.capitalized(sentences.say(phrase));
    }

    /** Rounded amounts are written without decimals where they have none. */
    private String amount(MonetaryAmount amount) {
        return sentences.formats().number(Amounts.number(amount));
    }

    /** How many of the texts belong into the first column, by their lengths in letters. */
    private static int half(List<Integer> lengths) {
        int whole = lengths.stream().mapToInt(length -> length + LAST_LINE).sum();
        int sum = 0;
        int count = 0;
        while (count < lengths.size() && 2 * sum + lengths.get(count) + LAST_LINE <= whole) {
            sum += lengths.get(count) + LAST_LINE;
            count++;
        }
        return count;
    }
}
