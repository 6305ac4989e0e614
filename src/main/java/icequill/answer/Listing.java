package icequill.answer;

import icequill.files.answer.Sheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A list of entries of the book. */
public record Listing(String name, List<String> head, List<List<String>> rows) implements Sheet {

    public Listing {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
    }

    /** Only rows that hold the text somewhere, in capitals or not. */
    public Listing with(String text) {
        String wanted = text.toLowerCase(Locale.ROOT);
        return new Listing(name, head, rows.stream()
                .filter(row -> row.stream().anyMatch(cell -> cell.toLowerCase(Locale.ROOT).contains(wanted)))
                .toList());
    }

    @Override
    public Object data() {
        return json();
    }

    public Map<String, Object> json() {
        return Map.of(name, rows.stream().map(this::object).toList());
    }

    private Map<String, String> object(List<String> row) {
        Map<String, String> object = new LinkedHashMap<>();
        for (int i = 0; i < row.size(); i++) {
            object.put(head.get(i), row.get(i));
        }
        return object;
    }
}
