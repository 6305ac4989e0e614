package icequill.files.pricing;

import icequill.files.disk.Hash;
import icequill.files.yaml.FolderFiles;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.List;
import java.util.stream.Stream;

/** Tells one state of a shop's rates from another, so that it stays known by which prices a paper was made. */
public final class RatesVersion {

    private static final int DIGITS = 16;

    private RatesVersion() {
    }

    /** The first hex digits of the SHA-256 over the names, lengths and bytes of all files of pricing/, by name. */
    public static Checked<String> of(Path folder) {
        try (Stream<Path> listed = Files.list(folder.resolve("pricing"))) {
            List<Path> files = listed.filter(file -> file.toString().endsWith(FolderFiles.YAML)).sorted().toList();
            MessageDigest digest = Hash.digest();
            for (Path file : files) {
                byte[] bytes = Files.readAllBytes(file);
                digest.update((file.getFileName() + " " + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
                digest.update(bytes);
            }
            return Checked.sound(Hash.text(digest.digest()).substring(0, DIGITS));
        } catch (IOException unreadable) {
            return Checked.faulty(new Problem(Code.UNREADABLE, Place.ofFile("pricing"),
                    "the rates cannot be read: " + unreadable, "a folder that may be read"));
        }
    }
}
