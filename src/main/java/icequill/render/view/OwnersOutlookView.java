package icequill.render.view;

import icequill.document.OwnersOutlook;
import icequill.explain.Phrase;
import icequill.render.drawing.Drawn;
import icequill.render.drawing.SwingSketch;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** The owner's page of a comparison as texts and drawings, ready for {@code owners-outlook.ftlh}. */
public record OwnersOutlookView(OwnersOutlook page, Sentences sentences) {

    public static Page of(OwnersOutlook page) {
        return new OwnersOutlookView(page, Sentences.of(page.language(), page.shop().address().country())).whole();
    }

    /**
     * What the page says.
     *
     * @param heads of the columns of the exact figures
     * @param base the answer that guesses move
     */
    record Own(String currency, List<String> heads, List<Line> lines, List<String> interval, String base, Drawn scale,
            List<Swing> swings, List<String> notes)
            implements
            Texts {}

    record Line(String label, List<String> values) implements Texts {}

    record Swing(String what, String low, String high, Drawn picture) implements Texts {}

    private Page whole() {
        return Page.of(new LetterView(page, sentences.word("mine.title"), sentences).letter(page.customer(),
                page.where().site(), page.where().address(),
                new Details(sentences).add("compare.date", sentences.formats().day(page.date())).rows()), own());
    }

    private Own own() {
        return new Own(page.base().getCurrency().getCurrencyCode(), page.heads().stream().map(this::say).toList(),
                page.lines().stream()
                        .map(line -> new Line(say(line.label()), line.values().stream().map(sentences::say).toList()))
                        .toList(),
                page.interval().stream().map(this::say).toList(),
                sentences.word(page.base().isNegative() ? "mine.base-dearer" : "mine.base", say(page.plan()),
                        amount(page.base().abs())),
                scale().scale(number -> sentences.formats().number(number), sentences.word("mine.scale")),
                page.swings().stream().map(this::swing).toList(), page.notes().stream().map(this::say).toList());
    }

    private Swing swing(OwnersOutlook.Swing swing) {
        String what = say(swing.what());
        String low = amount(swing.low());
        String high = amount(swing.high());
        return new Swing(what, low, high,
                scale().bar(swing.low(), swing.high(), sentences.word("mine.bar", what, low, high)));
    }

    /** One scale for all bars, so that their lengths can be compared. */
    private SwingSketch scale() {
        List<MonetaryAmount> all = Stream.concat(Stream.of(page.base()),
                page.swings().stream().flatMap(swing -> Stream.of(swing.low(), swing.high()))).toList();
        return SwingSketch.over(all, page.base());
    }

    private String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
    }

    private String say(Phrase phrase) {
        return Sentences.capitalized(sentences.say(phrase));
    }
}
