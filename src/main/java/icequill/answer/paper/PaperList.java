package icequill.answer.paper;

import icequill.answer.BookedPaper;
import java.util.List;

/** Papers of the book that were looked for, the newest first. */
public record PaperList(List<BookedPaper> papers) {

    public PaperList {
        papers = List.copyOf(papers);
    }
}
