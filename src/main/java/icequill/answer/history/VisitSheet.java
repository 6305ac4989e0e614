package icequill.answer.history;

import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.util.List;

/** One visit with its papers, for the screen in one language and as data. */
public record VisitSheet(VisitAnswer data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        return new HistoryText(sentences).lines(data.visit(), data.papers());
    }
}
