package icequill.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known name that a misspelled one most likely stands for. */
final class Nearest {

    private Nearest() {
    }

    /** The known name with the fewest edits, if no more than a third of the letters (at least two) differ; ties by order of letters. */
    static Optional<String> to(String found, Collection<String> known) {
        int most = Math.max(2, found.length() / 3);
        String wanted = found.toLowerCase(Locale.ROOT);
        return known.stream().filter(name -> edits(wanted, name) <= most)
                .min(Comparator.comparingInt((String name) -> edits(wanted, name))
                        .thenComparing(Comparator.naturalOrder()));
    }

    private static int edits(String wanted, String name) {
        return LevenshteinDistance.getDefaultInstance().apply(wanted, name.toLowerCase(Locale.ROOT));
    }
}
