package icequill.files.pricing;

import icequill.files.disk.Hash;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One state of what a shop's papers are made by: its rates, its own templates and pictures, and the settings that its offices share, as
 * files. It is known by a hash over them.
 */
public final class RatesVersion {

    private static final int DIGITS = 16;

    private final SortedMap<String, byte[]> files;
    private final String hash;

    private RatesVersion(SortedMap<String, byte[]> files) {
        this.files = files;
        this.hash = hash(files);
    }

    /**
     * The version that consists of these files.
     *
     * @param files by names such as {@code pricing/labor.yaml}; their bytes are not changed any more
     */
    public static RatesVersion of(Map<String, byte[]> files) {
        return new RatesVersion(Collections.unmodifiableSortedMap(new TreeMap<>(files)));
    }

    /** What papers name it by: the first hex digits of the hash. */
    public String id() {
        return idOf(hash);
    }

    /** SHA-256 over the names, lengths and bytes of all files, by name. */
    public String hash() {
        return hash;
    }

    /** The id of the version with this hash. */
    public static String idOf(String hash) {
        return hash.substring(0, Math.min(hash.length(), DIGITS));
    }

    public SortedMap<String, byte[]> files() {
        return files;
    }

    /** The text of a file; empty where there is none. */
    Optional<String> text(String name) {
        return Optional.ofNullable(files.get(name)).map(bytes -> new String(bytes, StandardCharsets.UTF_8));
    }

    private static String hash(SortedMap<String, byte[]> files) {
        MessageDigest digest = Hash.digest();
        files.forEach((name, bytes) -> {
            digest.update((name + " " + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
            digest.update(bytes);
        });
        return Hash.text(digest.digest());
    }
}
