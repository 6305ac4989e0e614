package icequill.answer.rates;

import icequill.files.pricing.RatesVersion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A version of the rates, its files, and what is different in it from another.
 *
 * @param hash SHA-256 over its files, in hexadecimal digits
 * @param other the version before it, by id; empty where it is the first
 */
public record RatesSheet(ToldVersion version, String hash, Map<String, Integer> files, Optional<String> other,
        ToldChanges changes) {

    public RatesSheet {
        files = new LinkedHashMap<>(files);
    }

    public static RatesSheet of(ToldVersion told, RatesVersion version, Optional<String> other, ToldChanges changes) {
        Map<String, Integer> files = new LinkedHashMap<>();
        version.files().forEach((name, bytes) -> files.put(name, bytes.length));
        return new RatesSheet(told, version.hash(), files, other, changes);
    }

    public Stream<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Version " + version.id() + (version.inForce() ? ", in force" : ""));
        version.adopted().forEach(adopted -> lines.add("Adopted " + adopted.text()));
        lines.add("Papers issued by it: " + version.papers());
        lines.add("SHA-256 " + hash);
        files.forEach((name, bytes) -> lines.add("  " + name + ", " + bytes + " bytes"));
        other.ifPresent(before -> lines.add(changes.isEmpty()
                ? "The same as " + before + " before it"
                : "What is different from " + before + " before it:"));
        return Stream.concat(lines.stream(), changes.lines());
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>(version.json());
        view.put("sha256", hash);
        view.put("files", files);
        view.put("before", other.orElse(null));
        view.put("changes", changes.json());
        return view;
    }
}
