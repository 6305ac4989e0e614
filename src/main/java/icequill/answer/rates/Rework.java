package icequill.answer.rates;

import icequill.answer.ChangedKey;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A paper worked out again from what the book held when it was issued.
 *
 * @param version of the rates it was made by
 * @param differences from what was issued, key by key of its data; none where all is the same
 */
public record Rework(String number, String version, List<ChangedKey> differences) {

    public Rework {
        differences = List.copyOf(differences);
    }

    /** The result of holding two papers against each other, as JSON. */
    public static Rework of(String number, String version, String issued, String again) {
        return new Rework(number, version, ChangedKey.ofPapers(issued, again));
    }

    public boolean isSame() {
        return differences.isEmpty();
    }

    public Stream<String> lines() {
        return isSame()
                ? Stream.of(number + " worked out again by version " + version + " of the rates: as issued")
                : Stream.concat(Stream.of(number + " worked out again by version " + version
                        + " of the rates: otherwise than issued, issued -> again"),
                        differences.stream().map(change -> "  " + change.text()));
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("number", number);
        view.put("version", version);
        view.put("same", isSame());
        view.put("differences", differences.stream().map(ChangedKey::json).toList());
        return view;
    }
}
