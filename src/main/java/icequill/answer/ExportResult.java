package icequill.answer;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** A file that was written out of the book, and how many papers are in it. */
public record ExportResult(Path file, long papers) {

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("file", file.toString());
        view.put("papers", papers);
        return view;
    }
}
