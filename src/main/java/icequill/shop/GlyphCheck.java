package icequill.shop;

import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.render.words.Fonts;
import java.util.List;
import java.util.stream.Stream;

/** Finds texts that could not be printed, before anything is. */
public final class GlyphCheck {

    private GlyphCheck() {
    }

    /** All that is wrong with what was read from the folder so far, and what was found beyond that. */
    public static Problems report(ShopFolder folder, Problems beyond) {
        Problems all = new Problems();
        all.addAll(folder.problems());
        all.addAll(problems(folder.texts()));
        all.addAll(beyond.list());
        return all;
    }

    static List<Problem> problems(List<ShopText> texts) {
        return texts.stream().flatMap(text -> {
            List<Integer> missing = Fonts.missing(text.text());
            return missing.isEmpty()
                    ? Stream.empty()
                    : Stream.of(new Problem(Code.NO_GLYPH, text.place(),
                            "our fonts cannot draw " + Fonts.named(missing),
                            Fonts.ALLOWED));
        }).toList();
    }
}
