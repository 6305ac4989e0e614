package icequill.answer.rates;

import icequill.answer.ChangedKey;
import java.util.List;
import java.util.stream.Stream;

/**
 * A paper worked out again from what the book held when it was issued.
 *
 * @param version of the rates it was made by
 * @param differences from what was issued, key by key of its data; none where all is the same
 */
public record Rework(String number, String version, boolean isSame, List<ChangedKey> differences) {

    public Rework {
        differences = List.copyOf(differences);
    }

    /** The result of holding two papers against each other, as JSON. */
    public static Rework of(String number, String version, String issued, String again) {
        List<ChangedKey> differences = ChangedKey.ofPapers(issued, again);
        return new Rework(number, version, differences.isEmpty(), differences);
    }

    public Stream<String> lines() {
        return isSame()
                ? Stream.of(number + " worked out again by version " + version + " of the rates: as issued")
                : Stream.concat(Stream.of(number + " worked out again by version " + version
                        + " of the rates: otherwise than issued, issued -> again"),
                        differences.stream().map(change -> "  " + change.text()));
    }
}
