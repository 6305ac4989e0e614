package icequill.answer.rates;

import icequill.files.answer.Sheet;
import icequill.files.pricing.RatesChange;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What is different between two versions, file by file and value by value. */
public record ToldChanges(List<RatesChange> files) implements Sheet {

    private static final String INDENT = "    ";

    public ToldChanges {
        files = List.copyOf(files);
    }

    @Override
    public List<RatesChange> data() {
        return files;
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
