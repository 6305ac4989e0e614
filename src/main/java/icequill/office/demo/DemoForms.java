package icequill.office.demo;

import icequill.files.disk.Folder;
import icequill.office.register.ImportOffice;
import icequill.problem.Validated;
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
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The forms of the invented shop, and what goes with them. */
final class DemoForms {

    /** The moment at which all of it is taken in and issued, so that each demo is the same. */
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-09-02T12:00:00Z"), ZoneOffset.UTC);
    /** What is not taken into a book. */
    private static final List<String> FOR_ONE_PAPER = List.of("credits", "records");
    /** What tells of bills that are issued. */
    private static final List<String> OF_BILLS = List.of("accounts", "payments");

    private DemoForms() {
    }

    /** Puts those into a book that bills are made of. */
    static Validated<Boolean> taken(ShopBook book) {
        List<String> later = Stream.concat(FOR_ONE_PAPER.stream(), OF_BILLS.stream()).toList();
        return taken(book, folder -> later.stream().noneMatch(folder::equals));
    }

    /** Puts what is known of customers' accounts, and what they paid, into a book that has issued their bills. */
    static Validated<Boolean> paid(ShopBook book) {
        return taken(book, OF_BILLS::contains);
    }

    private static Validated<Boolean> taken(ShopBook book, Predicate<String> folders) {
        return inFiles(folder -> ImportOffice.of(book).run(stored(folder, folders), false).map(done -> true));
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

    private static List<Path> stored(Path folder, Predicate<String> folders) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> folders.test(folder.relativize(file).getName(0).toString()))
                    .sorted()
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
