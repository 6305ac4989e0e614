package icequill.render.view;

import icequill.document.OwnersOutlook;
import icequill.explain.Phrase;
import icequill.render.drawing.SwingSketch;
import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** The owner's page of a comparison as texts and drawings, ready for {@code owners-outlook.ftlh}. */
public record OwnersOutlookView(OwnersOutlook page, Sentences sentences) {

    public static Map<String, Object> of(OwnersOutlook page) {
        return new OwnersOutlookView(page, Sentences.of(page.language(), page.shop().address().country())).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(page, sentences.word("mine.title"), sentences).model(page.customer(),
                        page.where().site(), page.where().address(),
                        new Details(sentences).add("compare.date", sentences.formats().day(page.date())).rows()));
        model.put("currency", page.base().getCurrency().getCurrencyCode());
        model.put("heads", page.heads().stream().map(this::say).toList());
        model.put("lines", page.lines().stream().map(line -> Map.of("label", say(line.label()), "values",
                line.values().stream().map(sentences::say).toList())).toList());
        model.put("interval", page.interval().stream().map(this::say).toList());
        model.put("base", sentences.word(page.base().isNegative() ? "mine.base-dearer" : "mine.base", say(page.plan()),
                amount(page.base().abs())));
        model.put("scale", scale().scale(number -> sentences.formats().number(number),
                sentences.word("mine.scale")));
        model.put("swings", page.swings().stream().map(this::swing).toList());
        model.put("notes", page.notes().stream().map(this::say).toList());
        return model;
    }

    private Map<String, Object> swing(OwnersOutlook.Swing swing) {
        String what = say(swing.what());
        String low = amount(swing.low());
        String high = amount(swing.high());
        return Map.of("what", what, "low", low, "high", high, "picture",
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
