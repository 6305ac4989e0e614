package icequill.office;

import icequill.document.Paper;
import icequill.files.Json;
import icequill.files.PaperJson;
import java.util.LinkedHashMap;
import java.util.Map;

/** A brushing sheet that was written, and all that stands on it. */
public final class Brushed {

    private final WrittenPaper paper;
    private final Paper sheet;

    Brushed(WrittenPaper paper, Paper sheet) {
        this.paper = paper;
        this.sheet = sheet;
    }

    public WrittenPaper paper() {
        return paper;
    }

    /** The paper, every figure on it, and how each was figured from what. */
    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>(paper.json());
        view.put("sheet", Json.map(PaperJson.write(sheet)).get("paper"));
        return view;
    }
}
