package icequill.answer.history;

import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One visit with its papers, for the screen in one language and as JSON. */
public record VisitSheet(ToldVisit visit, List<ToldPaper> papers, Sentences sentences) {

    public VisitSheet {
        papers = List.copyOf(papers);
    }

    public List<String> lines() {
        return new HistoryText(sentences).lines(visit, papers);
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>(RecordJson.of(visit));
        view.put("papers", papers.stream().map(RecordJson::of).toList());
        return view;
    }
}
