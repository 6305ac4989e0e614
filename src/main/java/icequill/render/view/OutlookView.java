package icequill.render.view;

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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/** What to expect of each way of care as texts and drawings, ready for {@code parts/outlook.ftlh}. */
record OutlookView(Outlook outlook, Sentences sentences) {

    Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("headline", say(outlook.answer().getFirst()));
        model.put("answer", outlook.answer().stream().skip(1).map(this::say).toList());
        model.put("legend", legend());
        model.put("later", sentences.word("outlook.over-years", String.valueOf(outlook.years())));
        model.put("ways", outlook.ways().stream().map(this::way).toList());
        model.put("beside", outlook.beside().stream().map(this::beside).toList());
        List<Map<String, String>> inputs = outlook.inputs().stream().map(this::input).toList();
        int half = Columns.half(inputs.stream()
                .map(input -> input.values().stream().mapToInt(String::length).sum()).toList());
        model.put("inputs", List.of(inputs.subList(0, half), inputs.subList(half, inputs.size())));
        model.put("reasons", Sentences.capitalized(
                outlook.reasons().stream().map(sentences::say).collect(Collectors.joining("; "))));
        return model;
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
        ChancesPerTenSites sites = way.sites();
        String counts = sentences.word("outlook.sites", String.valueOf(sites.none()), String.valueOf(sites.one()),
                String.valueOf(sites.more()));
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("name", Sentences.capitalized(
                sentences.word("outlook.way." + ConstantKey.of(way.kind()), way.name().map(this::in).orElse(""))));
        model.put("picture", MachinesSketch.of(sites, sentences.word("outlook.sites-text", counts)));
        model.put("sites", counts);
        model.put("gets", gets(way.scope()));
        model.put("own", way.withOwnCosts().map(own -> sentences.word("outlook.with-own", amount(own))).orElse(""));
        model.put("planned", way.planned().isZero() ? "–" : sentences.formats().amount(way.planned()));
        model.put("calls", sentences.formats().number(way.calls(), 1));
        model.put("first", range(way.first()));
        model.put("laterRange", range(way.later()));
        model.put("often", planned(way.first()));
        model.put("laterOften", planned(way.later()));
        model.put("mean", sentences.word("outlook.mean", amount(way.first().mean())));
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
