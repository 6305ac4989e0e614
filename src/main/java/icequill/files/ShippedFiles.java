package icequill.files;

import icequill.problem.Checked;
import icequill.problem.Problems;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** The files that come with the program, which a new shop folder starts from. */
public final class ShippedFiles {

    private ShippedFiles() {
    }

    /** The rates and their schemas, and a shop.yaml and a first visit to change. */
    public static Checked<Path> copyStarter(Path folder) {
        return copy("starter", folder).then(made -> copy("pricing", folder));
    }

    /** An invented shop with its sites and visits, and the rates. */
    public static Checked<Path> copyDemo(Path folder) {
        return copy("demo", folder).then(made -> copy("pricing", folder));
    }

    /** Names of the files of a set, from the folder on; the build checks that the list is complete. */
    public static List<String> names(String set) {
        return new String(bytes("/icequill/shipped/" + set + ".txt"), StandardCharsets.UTF_8).lines().toList();
    }

    private static Checked<Path> copy(String set, Path folder) {
        Problems problems = new Problems();
        for (String name : names(set)) {
            byte[] content = bytes("/icequill/" + (set.equals("pricing") ? "" : set + "/") + name);
            problems.take(SafeFile.write(folder.resolve(name), content, false));
        }
        return problems.or(() -> folder);
    }

    private static byte[] bytes(String resource) {
        try (InputStream stream = ShippedFiles.class.getResourceAsStream(resource)) {
            return Objects.requireNonNull(stream, resource).readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(resource, unreadable);
        }
    }
}
