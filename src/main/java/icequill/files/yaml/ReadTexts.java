package icequill.files.yaml;

import icequill.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What texts came to that were read a while ago. A command asks several times for what its shop's files say, and an office once for each
 * request; to read such a text again takes longer than all else that many of them do. The same text always comes to the same. For many
 * threads.
 */
final class ReadTexts {

    /** A shop's files some times over. */
    private static final int MOST = 100;
    /** Longer than any file of rates; what is longer is read anew, so that no more than some megabytes are ever kept. */
    private static final int LONGEST = 50_000;

    private final Map<Asked, Outcome> known = new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Outcome> eldest) {
            return size() > MOST;
        }
    };

    /**
     * What is read.
     *
     * @param name of its file, as places show it
     * @param isSeveral whether more than one document may stand in it
     */
    record Asked(String text, String name, boolean isSeveral) {}

    /** What it came to, and what is wrong with it. */
    record Outcome(List<Tree> trees, List<Problem> problems) {

        Outcome {
            trees = List.copyOf(trees);
            problems = List.copyOf(problems);
        }
    }

    /** The outcome, by reading where it is not known. Two threads may both read. */
    Outcome of(Asked asked, Supplier<Outcome> reading) {
        if (asked.text().length() > LONGEST) {
            return reading.get();
        }
        synchronized (known) {
            Outcome before = known.get(asked);
            if (before != null) {
                return before;
            }
        }
        Outcome found = reading.get();
        synchronized (known) {
            known.put(asked, found);
        }
        return found;
    }
}
