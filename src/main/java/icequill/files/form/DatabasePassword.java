package icequill.files.form;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where the password of a shop's database comes from, when it does not stand in its address, and who else may read it. */
public final class DatabasePassword {

    /** The variable of the environment that may hold it. */
    static final String VARIABLE = "ICEQUILL_BOOK_PASSWORD";
    private static final String KEY = "password=";
    private static final int MOST_BYTES = 10_000;
    private static final Set<PosixFilePermission> OF_OTHERS = EnumSet.of(PosixFilePermission.GROUP_READ,
            PosixFilePermission.OTHERS_READ);

    private DatabasePassword() {
    }

    /** The address of the database with the password: that of the file before that of the environment before its own. */
    public static Validated<Optional<String>> address(BookSettings settings, Path folder) {
        return address(settings, folder, System.getenv());
    }

    static Validated<Optional<String>> address(BookSettings settings, Path folder, Map<String, String> environment) {
        return settings.database().isEmpty()
                ? Validated.valid(Optional.empty())
                : password(settings, folder, environment)
                        .map(found -> settings.database().map(url -> found.map(word -> with(url, word)).orElse(url)));
    }

    /** What stands where others on this machine may read it. */
    public static Optional<Problem> readable(BookSettings settings, Path folder) {
        Path shop = folder.resolve("shop.yaml");
        Path file = settings.passwordFile().map(folder::resolve).orElse(shop);
        boolean holdsOne = settings.passwordFile().isPresent()
                || settings.database().filter(url -> url.contains(KEY)).isPresent();
        return holdsOne && othersRead(file)
                ? Optional.of(new Problem(Code.NOT_ALLOWED, Place.ofFile(file.toString()),
                        "the file holds the password of the database, and others on this machine may read it",
                        "chmod 600 " + file))
                : Optional.empty();
    }

    private static Validated<Optional<String>> password(BookSettings settings, Path folder,
            Map<String, String> environment) {
        return settings.passwordFile().map(name -> line(folder.resolve(name)).map(Optional::of))
                .orElseGet(() -> Validated
                        .valid(Optional.ofNullable(environment.get(VARIABLE)).filter(word -> !word.isEmpty())));
    }

    private static Validated<String> line(Path file) {
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
                "the password of the database is not to be had: " + why,
                "passwordFile in shop.yaml: a file that you may read, with the password in its first line"));
    }

    private static String with(String url, String password) {
        return url + (url.indexOf('?') < 0 ? "?" : "&") + KEY + URLEncoder.encode(password, StandardCharsets.UTF_8);
    }

    private static boolean othersRead(Path file) {
        try {
            return file.getFileSystem().supportedFileAttributeViews().contains("posix")
                    && Files.getPosixFilePermissions(file).stream().anyMatch(OF_OTHERS::contains);
        } catch (IOException unknown) {
            return false;
        }
    }
}
