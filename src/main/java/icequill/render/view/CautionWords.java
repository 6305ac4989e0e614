package icequill.render.view;

import icequill.explain.ConstantKey;
import icequill.render.words.Sentences;
import icequill.work.Caution;

/** How papers say a caution. */
public record CautionWords(Sentences sentences) {

    /** The whole sentence. */
    public String full(Caution caution) {
        return sentences.word("caution." + ConstantKey.of(caution));
    }

    /** A few words of it, for who has read it. */
    String brief(Caution caution) {
        return sentences.word("remember." + ConstantKey.of(caution));
    }
}
