package icequill.office.demo;

import icequill.files.disk.Folder;
import icequill.office.register.ImportOffice;
import icequill.problem.Checked;
import icequill.shop.ShippedFiles;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The forms of the invented shop, and what goes with them. */
final class DemoForms {

    /** The moment at which all of it is taken in and issued, so that each demo is the same. */
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-09-02T12:00:00Z"), ZoneOffset.UTC);
    /** What is not taken into a book. */
    private static final List<String> FOR_ONE_PAPER = List.of("accounts", "credits", "records");

    private DemoForms() {
    }

    /** Puts them into a book. */
    static Checked<Boolean> taken(ShopBook book) {
        return inFiles(folder -> ImportOffice.of(book).run(stored(folder), false).map(done -> true));
    }

    /** Does something with them as files, which are there only as long. */
    static <T> T inFiles(Function<Path, T> work) {
        try {
            Path folder = Files.createTempDirectory("icequill-demo-forms");
            try {
                return work.apply(ShippedFiles.copyDemoForms(folder).orElseThrow());
            } finally {
                Folder.delete(folder);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static List<Path> stored(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> FOR_ONE_PAPER.stream().noneMatch(part -> folder.relativize(file).startsWith(part)))
                    .sorted()
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
