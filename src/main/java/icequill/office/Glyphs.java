package icequill.office;

import icequill.files.ShopFolder;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.render.Fonts;
import java.util.List;
import java.util.stream.Stream;

/** Finds texts that could not be printed, before anything is. */
final class Glyphs {

    private Glyphs() {
    }

    static List<Problem> problems(List<ShopFolder.Text> texts) {
        return texts.stream().flatMap(text -> {
            List<Integer> missing = Fonts.missing(text.text());
            return missing.isEmpty()
                    ? Stream.empty()
                    : Stream.of(new Problem(Code.NO_GLYPH, text.place(),
                            "our fonts cannot draw " + Fonts.named(missing),
                            "letters of scripts that run from left to right, such as Latin, Greek, Cyrillic and Armenian, and common signs"));
        }).toList();
    }
}
