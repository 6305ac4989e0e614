package icequill.render.view;

import icequill.document.FitSheet;
import icequill.explain.Phrase;
import icequill.render.drawing.Drawn;
import icequill.render.drawing.FitSketch;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Optional;

/** A fit as texts and plots, ready for {@code fit-sheet.ftlh}. */
public record FitSheetView(FitSheet sheet, Sentences sentences) {

    public static Page of(FitSheet sheet) {
        return told(sheet).page();
    }

    /** In the language of the sheet. */
    public static FitSheetView told(FitSheet sheet) {
        return new FitSheetView(sheet, Sentences.of(sheet.language(), sheet.shop().address().country()));
    }

    /**
     * Clocks that were fitted.
     *
     * @param settings lines for the file of rates; may be empty
     */
    public record Fitted(List<Plot> plots, List<String> notes, List<String> settings) implements Texts {}

    /**
     * One of them beside what was recorded.
     *
     * @param picture of what was recorded, where anything was
     */
    public record Plot(String title, List<String> said, Optional<Drawn> picture) implements Texts {}

    private Page page() {
        return Page.of(
                new LetterView(sheet, sentences.word("fit.title"), sentences).letter(sheet.shop().name(),
                        sheet.shop().name(), sheet.shop().address(),
                        new Details(sentences).add("compare.date", sentences.formats().day(sheet.date()))
                                .add("fit.table", sheet.table().orElseGet(() -> sentences.word("fit.book"))).rows()),
                fitted());
    }

    /** What was found. */
    public Fitted fitted() {
        return new Fitted(sheet.plots().stream().map(this::plot).toList(),
                sheet.notes().stream().map(this::say).toList(), sheet.settings());
    }

    private Plot plot(FitSheet.Plot plot) {
        String title = say(plot.title());
        return new Plot(title, plot.said().stream().map(this::say).toList(),
                plot.points().isEmpty()
                        ? Optional.empty()
                        : Optional.of(FitSketch.of(plot, sentences.word("fit.plot", title))));
    }

    private String say(Phrase phrase) {
        return Sentences.capitalized(sentences.say(phrase));
    }
}
