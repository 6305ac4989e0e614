package icequill.answer;

import icequill.files.yaml.Json;
import icequill.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Results as JSON text, for other programs. */
public final class JsonText {

    private JsonText() {
    }

    /**
     * A result as JSON.
     *
     * @param value of maps, lists, texts, truths and whole numbers; the order of keys is kept
     */
    public static String of(Map<String, ?> value) {
        return Json.text(value);
    }

    /** All problems of a run, under the key "problems". */
    public static String problems(List<Problem> problems) {
        return Json.text(Map.of("problems", problems.stream().map(JsonText::problem).toList()));
    }

    /** One problem. */
    public static Map<String, Object> problem(Problem problem) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("code", problem.code().name());
        view.put("file", problem.place().file());
        view.put("line", problem.place().line());
        view.put("path", problem.place().path());
        view.put("message", problem.message());
        view.put("allowed", problem.allowed());
        return view;
    }
}
