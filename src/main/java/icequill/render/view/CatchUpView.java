package icequill.render.view;

import icequill.document.CatchUpPrice;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Wording;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.stream.Collectors;

/** How machines were found, and what it costs to bring them into the condition that a plan is for, as texts. */
record CatchUpView(CatchUpPrice price, Sentences sentences) {

    /**
     * The first year's.
     *
     * @param surveyed when
     * @param usual what a usual visit costs, which is taken off
     */
    record CatchUp(String surveyed, List<Found> machines, List<LineView.Row> lines, String whole, String usual,
            String extra)
            implements
            Texts {}

    /** @param note may be empty */
    record Found(String where, String lastCleaned, String found, String note, String tasks) implements Texts {}

    CatchUp catchUp() {
        return new CatchUp(sentences.say(Phrase.of("catch-up.surveyed", new Fact.Day(price.surveyed()))),
                price.machines().stream().map(this::found).toList(), new LikeLines(price.lines(), sentences).rows(),
                sentences.formats().amount(price.whole()), sentences.formats().amount(price.usual().negate()),
                sentences.formats().amount(price.extra()));
    }

    private Found found(CatchUpPrice.Found machine) {
        return new Found(Sentences.capitalized(machine.where()),
                machine.lastCleaned().map(day -> sentences.formats().day(day))
                        .orElseGet(() -> sentences.word("catch-up.unknown")),
                Sentences.capitalized(machine.found().isEmpty()
                        ? sentences.word("catch-up.fair")
                        : joined(machine.found())),
                machine.note().orElse(""), Sentences.capitalized(joined(machine.tasks())));
    }

    private String joined(List<Wording> texts) {
        return texts.stream().map(sentences::in).collect(Collectors.joining("; "));
    }
}
