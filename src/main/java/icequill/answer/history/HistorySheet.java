package icequill.answer.history;

import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.util.List;

/** The history of a site or a machine, for the screen in one language and as data. */
public record HistorySheet(SiteHistory data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        return new HistoryText(sentences).lines(data);
    }
}
