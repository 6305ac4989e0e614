package icequill.answer.rates;

import icequill.files.pricing.RatesChange;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is different between two versions, file by file and value by value. */
public record ToldChanges(List<RatesChange> files) {

    private static final String INDENT = "    ";

    public ToldChanges {
        files = List.copyOf(files);
    }

    public boolean isEmpty() {
        return files.isEmpty();
    }

    /** A line for each file, then one for each of its values. */
    public Stream<String> lines() {
        return files.stream().flatMap(file -> Stream.concat(Stream.of("  " + file.file() + ": " + kind(file)),
                file.values().stream().map(value -> INDENT + value.path() + ": " + shown(value.before()) + " -> "
                        + shown(value.after()))));
    }

    /** The names of the files. */
    public String names() {
        return String.join(", ", files.stream().map(RatesChange::file).toList());
    }

    public List<Map<String, Object>> json() {
        return files.stream().map(file -> {
            Map<String, Object> view = new LinkedHashMap<>();
            view.put("file", file.file());
            view.put("change", word(file));
            view.put("values", file.values().stream().map(ToldChanges::json).toList());
            return view;
        }).toList();
    }

    private static Map<String, Object> json(RatesChange.Value value) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("path", value.path());
        view.put("before", value.before().orElse(null));
        view.put("after", value.after().orElse(null));
        return view;
    }

    private static String kind(RatesChange file) {
        boolean sameValues = file.kind() == RatesChange.Kind.CHANGED && file.values().isEmpty();
        return sameValues && file.file().endsWith(".yaml") ? "changed in comments or layout only" : word(file);
    }

    private static String word(RatesChange file) {
        return file.kind().name().toLowerCase(Locale.ROOT);
    }

    private static String shown(Optional<String> text) {
        return text.orElse("none");
    }
}
