package icequill;

import icequill.cli.CommandsTest.Run;
import icequill.problem.Check;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** The demo with all its papers, as one run leaves it, made once for all tests. Nobody may change it: {@link #copy} is for those who do. */
public final class FinishedDemo {

    private static final Path FOLDER = SharedFolder.made("icequill-demo").resolve("shop");
    private static final Run MADE = made();

    private FinishedDemo() {
    }

    public static List<Path> papers() throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER.resolve("papers"))) {
            return files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
        }
    }

    public static Path copy(Path to) throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(FOLDER.relativize(file)), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        return to;
    }

    /** What the command that made it told, as JSON. */
    public static JsonNode told() {
        return MADE.json();
    }

    private static Run made() {
        Run run = Run.of("demo", FOLDER.toString(), "--json");
        Check.that(run.status() == 0, run.err());
        return run;
    }
}
