package icequill.answer.paper;

import icequill.answer.Reprint;
import java.util.List;

/** The papers of a book whose files were made anew. */
public record Reprints(List<Reprint> papers) {

    public Reprints {
        papers = List.copyOf(papers);
    }
}
