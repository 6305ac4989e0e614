package icequill;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.BookChild;
import icequill.ledger.Books;
import icequill.ledger.store.BookPlace;
import icequill.problem.Check;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * The command lines of JVMs that tests start. A JVM keeps ready what it loads from jars only, so the classes of the program and of its tests
 * are packed into one, and what a day's work takes of all is kept by a first process: the others then start in a third of the time.
 */
public final class OwnProcess {

    private static final List<String> PLAIN = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData",
            "-Xlog:disable", "-Xmx256m", "-Djava.awt.headless=true", "--enable-native-access=ALL-UNNAMED",
            "-Djava.util.logging.config.file=" + Path.of("src/main/dist/lib/logging.properties").toAbsolutePath());
    private static final Path FOLDER = SharedFolder.made("icequill-classes");
    private static final String CLASSES = jars();
    private static final String KEPT = "-XX:SharedArchiveFile=" + kept();

    private OwnProcess() {
    }

    /**
     * The words of a command.
     *
     * @param options of the JVM, besides those that all have
     */
    public static List<String> java(List<String> options, Class<?> main, List<String> arguments) {
        return line(Stream.concat(Stream.of(KEPT), options.stream()), main, arguments);
    }

    private static List<String> line(Stream<String> options, Class<?> main, List<String> arguments) {
        List<String> line = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        line.addAll(PLAIN);
        options.forEach(line::add);
        line.addAll(List.of("-cp", CLASSES, main.getName()));
        line.addAll(arguments);
        return line;
    }

    /** The class path, with its folders packed. */
    private static String jars() {
        List<Path> path = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator)).map(Path::of)
                .toList();
        Path packed = FOLDER.resolve("classes.jar");
        Set<String> names = new HashSet<>();
        try (ZipOutputStream jar = new ZipOutputStream(Files.newOutputStream(packed))) {
            jar.setLevel(Deflater.NO_COMPRESSION);
            for (Path folder : path.stream().filter(Files::isDirectory).toList()) {
                try (Stream<Path> files = Files.walk(folder).filter(file -> !file.equals(folder))) {
                    for (Path file : files.sorted().toList()) {
                        // Folders too: who looks for what is in one looks for it first.
                        String name = folder.relativize(file) + (Files.isDirectory(file) ? "/" : "");
                        if (names.add(name)) {
                            jar.putNextEntry(new ZipEntry(name));
                            if (!Files.isDirectory(file)) {
                                Files.copy(file, jar);
                            }
                        }
                    }
                }
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return Stream.concat(Stream.of(packed), path.stream().filter(Files::isRegularFile)).map(Path::toString)
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static Path kept() {
        Path archive = FOLDER.resolve("classes.jsa");
        Path shop = DemoShop.in(FOLDER.resolve("shop"));
        try {
            int status = new ProcessBuilder(line(Stream.of("-XX:ArchiveClassesAtExit=" + archive), DaysWork.class,
                    List.of(shop.toString()))).inheritIO().start().waitFor();
            Check.that(status == 0, "a day's work that ended with " + status);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
        return archive;
    }

    /** What the first process does: papers in a book, and a visit billed in a shop. */
    static final class DaysWork {

        private DaysWork() {
        }

        public static void main(String[] args) throws IOException {
            Path book = Path.of(args[0]).resolveSibling("book.sqlite");
            BookChild.main(new String[]{book.toString(), BookPlace.papersIn(book.getParent()).toString(), "add", "ann",
                    "1"});
            for (List<String> command : List.of(List.of("visit", "add", args[0] + "/visits/late-call.yaml"),
                    List.of("invoice", "issue", "late-call", "--date", "2026-05-14"), List.of("audit"),
                    List.of("backup", args[0] + ".backup"))) {
                List<String> line = new ArrayList<>(command);
                line.addAll(List.of("--shop", args[0]));
                Run run = Run.at(Books.CLOCK, line.toArray(String[]::new));
                Check.that(run.status() == 0, run.err());
            }
        }
    }
}
