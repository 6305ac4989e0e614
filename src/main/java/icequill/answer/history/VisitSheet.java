package icequill.answer.history;

import icequill.explain.ConstantKey;
import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;

/** One visit with its papers, for the screen in one language and as data. */
public record VisitSheet(VisitAnswer data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>(new HistoryText(sentences).lines(data.visit(), data.papers()));
        data.claims().forEach(claim -> lines.add(sentences.word("history.claim", claim.claim(),
                sentences.word("page.claim.state." + ConstantKey.of(claim.state())),
                sentences.formats().day(claim.since()))));
        if (data.isUnclaimed()) {
            lines.add(sentences.word("history.unclaimed"));
        }
        return lines;
    }
}
