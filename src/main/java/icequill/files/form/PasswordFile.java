package icequill.files.form;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A file whose first line is a password.
 *
 * @param key in shop.yaml under which it stands
 */
record PasswordFile(Path file, String key) {

    private static final int MOST_BYTES = 10_000;
    private static final Set<PosixFilePermission> OF_OTHERS = EnumSet.of(PosixFilePermission.GROUP_READ,
            PosixFilePermission.OTHERS_READ);

    /** The password, or why it is not to be had. */
    Validated<String> line() {
        String why = "there is no such file";
        if (Files.isRegularFile(file)) {
            try (BufferedReader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                String line = Files.size(file) > MOST_BYTES ? null : text.readLine();
                if (line != null && !line.isEmpty()) {
                    return Validated.valid(line);
                }
                why = "its first line is no password";
            } catch (IOException unreadable) {
                why = "it cannot be read";
            }
        }
        return Validated.invalid(new Problem(Code.UNREADABLE, Place.ofFile(file.toString()),
                "the password is not to be had: " + why,
                key + " in shop.yaml: a file that you may read, with the password in its first line"));
    }

    /** That others on this machine may read it. */
    Optional<Problem> readable() {
        return othersRead()
                ? Optional.of(new Problem(Code.NOT_ALLOWED, Place.ofFile(file.toString()),
                        "the file holds a password, and others on this machine may read it",
                        "chmod 600 " + file))
                : Optional.empty();
    }

    private boolean othersRead() {
        try {
            return file.getFileSystem().supportedFileAttributeViews().contains("posix")
                    && Files.getPosixFilePermissions(file).stream().anyMatch(OF_OTHERS::contains);
        } catch (IOException unknown) {
            return false;
        }
    }
}
