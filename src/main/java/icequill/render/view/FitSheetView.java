package icequill.render.view;

import icequill.document.FitSheet;
import icequill.explain.Phrase;
import icequill.render.drawing.FitSketch;
import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A fit as texts and plots, ready for {@code fit-sheet.ftlh}. */
public record FitSheetView(FitSheet sheet, Sentences sentences) {

    public static Map<String, Object> of(FitSheet sheet) {
        return new FitSheetView(sheet, Sentences.of(sheet.language(), sheet.shop().address().country())).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(sheet, sentences.word("fit.title"), sentences).model(sheet.shop().name(),
                        sheet.shop().name(), sheet.shop().address(),
                        new Details(sentences).add("compare.date", sentences.formats().day(sheet.date()))
                                .add("fit.table", sheet.table()).rows()));
        model.put("plots", sheet.plots().stream().map(this::plot).toList());
        model.put("notes", sheet.notes().stream().map(this::say).toList());
        model.put("settings", sheet.settings());
        return model;
    }

    private Map<String, Object> plot(FitSheet.Plot plot) {
        Map<String, Object> view = new LinkedHashMap<>();
        List<String> said = plot.said().stream().map(this::say).toList();
        view.put("title", say(plot.title()));
        view.put("said", said);
        if (!plot.points().isEmpty()) {
            view.put("picture", FitSketch.of(plot, sentences.word("fit.plot", say(plot.title()))));
        }
        return view;
    }

    private String say(Phrase phrase) {
        return Sentences.capitalized(sentences.say(phrase));
    }
}
