package icequill.answer.history;

import java.util.List;

/** One visit, and the papers that were issued for it. */
public record VisitAnswer(ToldVisit visit, List<ToldPaper> papers) {

    public VisitAnswer {
        papers = List.copyOf(papers);
    }
}
