package icequill.render.view;

import icequill.document.CatchUpPrice;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Wording;
import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How machines were found, and what it costs to bring them into the condition that a plan is for, as texts. */
record CatchUpView(CatchUpPrice price, Sentences sentences) {

    Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("surveyed", sentences.say(Phrase.of("catch-up.surveyed", new Fact.Day(price.surveyed()))));
        model.put("machines", price.machines().stream().map(this::found).toList());
        model.put("lines", new LikeLines(price.lines(), sentences).rows());
        model.put("whole", sentences.formats().amount(price.whole()));
        model.put("usual", sentences.formats().amount(price.usual().negate()));
        model.put("extra", sentences.formats().amount(price.extra()));
        return model;
    }

    private Map<String, String> found(CatchUpPrice.Found machine) {
        return Map.of("where", Sentences.capitalized(machine.where()), "lastCleaned",
                machine.lastCleaned().map(day -> sentences.formats().day(day))
                        .orElseGet(() -> sentences.word("catch-up.unknown")),
                "found", Sentences.capitalized(machine.found().isEmpty()
                        ? sentences.word("catch-up.fair")
                        : joined(machine.found())),
                "note", machine.note().orElse(""), "tasks", Sentences.capitalized(joined(machine.tasks())));
    }

    private String joined(List<Wording> texts) {
        return texts.stream().map(sentences::in).collect(Collectors.joining("; "));
    }
}
