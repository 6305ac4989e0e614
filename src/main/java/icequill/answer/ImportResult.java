package icequill.answer;

import icequill.files.form.FormKind;
import java.util.Arrays;
import java.util.List;

/**
 * What was taken into the book, or would be.
 *
 * @param forms in the order in which they were taken in
 * @param dryRun whether nothing was stored
 */
public record ImportResult(List<Taken> forms, boolean dryRun) {

    /** What a form is to the book. */
    public enum State {
        NEW, CHANGED, SAME
    }

    /** One form. */
    public record Taken(FormKind form, String id, State state) {}

    public ImportResult {
        forms = List.copyOf(forms);
    }

    /** How many of a kind are new, changed and the same. */
    public record Count(FormKind form, String fresh, String changed, String same) {}

    /** By kind. */
    public List<Count> counts() {
        return Arrays.stream(FormKind.values()).filter(kind -> count(kind) > 0)
                .map(kind -> new Count(kind, count(kind, State.NEW), count(kind, State.CHANGED),
                        count(kind, State.SAME)))
                .toList();
    }

    /** The same for a screen. */
    public List<List<String>> rows() {
        return counts().stream()
                .map(count -> List.of(count.form().words(), count.fresh(), count.changed(), count.same())).toList();
    }

    private long count(FormKind kind) {
        return forms.stream().filter(form -> form.form() == kind).count();
    }

    private String count(FormKind kind, State state) {
        return String.valueOf(forms.stream().filter(form -> form.form() == kind && form.state() == state).count());
    }
}
