package icequill.answer.history;

import icequill.render.words.Sentences;
import java.util.List;
import java.util.Map;

/** The history of a site or a machine, for the screen in one language and as JSON. */
public record HistorySheet(SiteHistory history, Sentences sentences) {

    public List<String> lines() {
        return new HistoryText(sentences).lines(history);
    }

    public Map<String, Object> json() {
        Map<String, Object> view = RecordJson.of(history);
        view.put("done", history.done());
        view.put("planned", history.planned());
        view.put("withdrawn", history.withdrawn());
        view.put("calls", history.calls());
        view.put("billed", history.billed().stream().map(RecordJson::amount).toList());
        return view;
    }
}
