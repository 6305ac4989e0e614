package icequill.files.form;

import icequill.problem.Problem;
import icequill.problem.Validated;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Where the password of a shop's database comes from, when it does not stand in its address, and who else may read it. */
public final class DatabasePassword {

    /** The variable of the environment that may hold it. */
    static final String VARIABLE = "ICEQUILL_BOOK_PASSWORD";
    private static final String KEY = "password=";

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
        return holdsOne ? of(file).readable() : Optional.empty();
    }

    private static PasswordFile of(Path file) {
        return new PasswordFile(file, "passwordFile");
    }

    private static Validated<Optional<String>> password(BookSettings settings, Path folder,
            Map<String, String> environment) {
        return settings.passwordFile().map(name -> of(folder.resolve(name)).line().map(Optional::of))
                .orElseGet(() -> Validated
                        .valid(Optional.ofNullable(environment.get(VARIABLE)).filter(word -> !word.isEmpty())));
    }

    private static String with(String url, String password) {
        return url + (url.indexOf('?') < 0 ? "?" : "&") + KEY + URLEncoder.encode(password, StandardCharsets.UTF_8);
    }
}
