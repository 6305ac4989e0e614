package icequill.answer.rates;

import icequill.files.pricing.RatesVersion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A version of the rates, its files, and what is different in it from another.
 *
 * @param sha256 over its files, in hexadecimal digits
 * @param before the version before it, by id; empty where it is the first
 */
public record RatesSheet(ToldVersion rates, String sha256, List<FileSize> files, Optional<String> before,
        ToldChanges changes) {

    /** One of the files. */
    public record FileSize(String file, int bytes) {}

    public RatesSheet {
        files = List.copyOf(files);
    }

    public static RatesSheet of(ToldVersion told, RatesVersion version, Optional<String> other, ToldChanges changes) {
        return new RatesSheet(told, version.hash(), version.files().entrySet().stream()
                .map(file -> new FileSize(file.getKey(), file.getValue().length)).toList(), other, changes);
    }

    public Stream<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Version " + rates.version() + (rates.inForce() ? ", in force" : ""));
        rates.adopted().forEach(adopted -> lines.add("Adopted " + adopted.text()));
        lines.add("Papers issued by it: " + rates.papers());
        lines.add("SHA-256 " + sha256);
        files.forEach(one -> lines.add("  " + one.file() + ", " + one.bytes() + " bytes"));
        before.ifPresent(other -> lines.add(changes.isEmpty()
                ? "The same as " + other + " before it"
                : "What is different from " + other + " before it:"));
        return Stream.concat(lines.stream(), changes.lines());
    }
}
