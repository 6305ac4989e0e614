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
import icequill.render.drawing.MachinesSketch;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** What to expect of each way of care as texts and drawings, ready for {@code parts/outlook.ftlh}. */
record OutlookView(Outlook outlook, Sentences sentences) {

    Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("headline", say(outlook.answer().getFirst()));
        model.put("answer", outlook.answer().stream().skip(1).map(this::say).toList());
        model.put("legend", legend());
        model.put("pictures", Stream.of(ordered().getFirst(), ordered().getLast()).map(this::picture).toList());
        model.put("rows", ordered().stream().map(this::row).toList());
        model.put("besideHead", sentences.word("outlook.beside-head." + Outlook.dirtCosts(outlook.ways())));
        model.put("yearNote", sentences.word(isOwn() ? "outlook.year-note-own" : "outlook.year-note"));
        model.put("later", sentences.word("outlook.over-years", String.valueOf(outlook.years())));
        model.put("ways", ordered().stream().map(this::way).toList());
        model.put("beside", outlook.beside().stream().map(this::beside).toList());
        List<Map<String, String>> inputs = outlook.inputs().stream().map(this::input).toList();
        int half = Columns.half(inputs.stream()
                .map(input -> input.values().stream().mapToInt(String::length).sum()).toList());
        model.put("inputs", List.of(inputs.subList(0, half), inputs.subList(half, inputs.size())));
        model.put("reasons", Sentences.capitalized(
                outlook.reasons().stream().map(sentences::say).collect(Collectors.joining("; "))));
        return model;
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

    private Map<String, Object> picture(Outlook.Way way) {
        return Map.of("name", name(way), "picture",
                MachinesSketch.large(way.sites(), sentences.word("outlook.sites-text", counts(way))), "sites",
                counts(way));
    }

    private Map<String, Object> row(Outlook.Way way) {
        Outlook.ExpectedYear year = way.year();
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("name", name(way));
        model.put("calls", sentences.formats().number(way.calls(), 1));
        model.put("planned", year.planned().isZero() ? "–" : sentences.formats().amount(year.planned()));
        model.put("charges", amount(year.calls()));
        model.put("cash", sum(year.cash()));
        model.put("beside", year.beside().sum().isZero() ? "–" : amount(year.beside().sum()));
        model.put("parts", Stream.of(year.beside().stops(), year.beside().electricity(), year.beside().wear())
                .filter(part -> !part.isZero()).map(this::amount).collect(Collectors.joining(" + ")));
        model.put("all", sum(year.all()));
        model.put("isNeglect", way.kind() == CareOptionKind.PAY_PER_CALL);
        return model;
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

    private List<Map<String, Object>> legend() {
        String none = sentences.word("outlook.legend.none");
        String one = sentences.word("outlook.legend.one");
        String more = sentences.word("outlook.legend.more");
        return List.of(Map.of("picture", MachinesSketch.quietOne(""), "text", none),
                Map.of("picture", MachinesSketch.hatchedOne(""), "text", one),
                Map.of("picture", MachinesSketch.darkOne(""), "text", more));
    }

    private Map<String, Object> way(Outlook.Way way) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("name", name(way));
        model.put("picture", MachinesSketch.of(way.sites(), sentences.word("outlook.sites-text", counts(way))));
        model.put("sites", counts(way));
        model.put("gets", gets(way.scope()));
        model.put("first", range(way.first()));
        model.put("laterRange", range(way.later()));
        model.put("often", planned(way.first()));
        model.put("laterOften", planned(way.later()));
        model.put("laterMean", sentences.word("outlook.mean", amount(way.later().mean())));
        model.put("cheaper", way.cheaperFirst().map(this::cheaper).orElse(""));
        model.put("laterCheaper", way.cheaperLater().map(this::cheaper).orElse(""));
        return model;
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

    private Map<String, String> beside(Outlook.Beside row) {
        return Map.of("what", say(row.what()), "howMuch", say(row.howMuch()), "origin", say(row.origin()));
    }

    private Map<String, String> input(Outlook.Input input) {
        return Map.of("what", say(input.what()), "origin", say(input.origin()));
    }

    private String say(Phrase phrase) {
        return Sentences.capitalized(sentences.say(phrase));
    }

    /** Rounded amounts are written without decimals where they have none. */
    private String amount(MonetaryAmount amount) {
        return sentences.formats().number(Amounts.number(amount));
    }
}
