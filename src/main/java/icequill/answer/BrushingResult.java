package icequill.answer;

import icequill.document.Paper;
import icequill.files.answer.Sheet;
import icequill.files.paper.PaperJson;
import icequill.files.yaml.Json;
import java.util.LinkedHashMap;
import java.util.Map;

/** A brushing sheet that was written, and all that stands on it. */
public final class BrushingResult implements Sheet {

    private final WrittenPaper paper;
    private final Paper sheet;

    public BrushingResult(WrittenPaper paper, Paper sheet) {
        this.paper = paper;
        this.sheet = sheet;
    }

    public WrittenPaper paper() {
        return paper;
    }

    @Override
    public Object data() {
        return json();
    }

    /** The paper, every figure on it, and how each was figured from what. */
    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>(paper.json());
        view.put("sheet", Json.map(PaperJson.write(sheet)).get("paper"));
        return view;
    }
}
