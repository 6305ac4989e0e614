package icequill;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.ledger.Database;
import icequill.office.Office;
import icequill.office.register.ImportOffice;
import icequill.problem.Problem;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.ShippedFiles;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.work.Visit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The invented shop before any visit was recorded: its book has customers, sites, agreements, requests and planned visits. The forms of
 * all of them, and of the visits, lie in folders beside it, for tests that change them.
 */
public final class DemoShop {

    /** What other forms name. */
    private static final List<String> NAMED = List.of("sites", "agreements");
    private static final List<String> IN_BOOK = List.of("sites", "agreements", "quotes", "planned", "brushing");
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-30T17:00:00Z"), ZoneOffset.UTC);
    private static final Path BASE = made();

    private DemoShop() {
    }

    /** In a new or empty folder. */
    public static Path in(Path folder) {
        try (Stream<Path> files = Files.walk(BASE)) {
            for (Path file : files.toList()) {
                Path copy = folder.resolve(BASE.relativize(file));
                if (!Files.isDirectory(copy)) {
                    Files.createDirectories(copy.getParent());
                    Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
            return folder;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The same with its book in a database. On a server no rates are in force yet. */
    public static Path in(Path folder, Database database) {
        return database == Database.SQLITE
                ? in(folder)
                : onServer(files(folder), Database.copyOf("demo_shop", DemoShop::fill));
    }

    /** Makes the book of a shop be on a server, at that address. */
    public static Path onServer(Path folder, String url) {
        try {
            Files.writeString(folder.resolve("shop.yaml"), "\nbook:\n  database: " + url + "\n",
                    StandardOpenOption.APPEND);
            return folder;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void fill(String url) {
        imported(onServer(files(SharedFolder.made("icequill-server-shop")), url));
    }

    /** The same without a book. */
    public static Path files(Path folder) {
        ShippedFiles.copyDemo(folder).orElseThrow();
        return ShippedFiles.copyDemoForms(folder).orElseThrow();
    }

    /** Takes the forms of a folder, but for its visits, into its book. */
    public static void imported(Path folder) {
        ImportOffice.of(ShopBook.of(folder, CLOCK))
                .run(files(folder, IN_BOOK), false).orElseThrow();
    }

    /** The same of a shop with a book, which knows all that was not changed. */
    public static void changed(Path folder) {
        ImportOffice.of(ShopBook.of(folder, CLOCK))
                .run(files(folder, IN_BOOK).stream().filter(file -> isChanged(folder, file)).toList(), false)
                .orElseThrow();
    }

    private static boolean isChanged(Path folder, Path file) {
        try {
            Path before = BASE.resolve(folder.relativize(file));
            return Files.notExists(before) || Files.mismatch(before, file) >= 0;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The shop with the sites and agreements that lie beside it, as they are now. */
    public static ShopFolder read(Path folder) {
        ShopFolder bare = BookForms.shop(ShopBook.of(folder, CLOCK));
        List<Form> forms = files(folder, NAMED).stream().flatMap(file -> bare.forms(file).stream()).toList();
        return bare.with(forms);
    }

    /** The office of the shop, which goes by the sites and agreements that lie beside it. */
    public static Office office(Path folder) {
        return Office.of(folder, named(folder));
    }

    /** A visit from a file. */
    public static Optional<Visit> visit(ShopFolder shop, Path file) {
        return shop.form(FormName.file(file), List.of(FormKind.VISIT, FormKind.PLANNED_VISIT))
                .flatMap(shop.contents()::visit);
    }

    /** The sites and agreements that lie beside a shop, and visits that say what they are; none where there are none. */
    public static List<Path> named(Path folder) {
        return Stream.concat(files(folder, NAMED).stream(),
                files(folder, List.of("visits")).stream().filter(DemoShop::saysItsForm)).toList();
    }

    private static boolean saysItsForm(Path file) {
        try {
            return Files.readString(file).contains("\nform: ");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** What is wrong with all forms that lie beside a shop, held against its settings and rates. */
    public static List<Problem> problems(Path folder) {
        return ImportOffice.of(ShopBook.of(folder, CLOCK)).run(forms(folder), true).problems();
    }

    /** All forms that lie beside a shop. */
    public static List<Path> forms(Path folder) {
        return Stream.concat(files(folder, IN_BOOK).stream(), files(folder, List.of("visits")).stream()).toList();
    }

    /** The forms of one of the folders, by name. */
    public static List<Path> files(Path shop, String folder) {
        return files(shop, List.of(folder));
    }

    private static List<Path> files(Path shop, List<String> folders) {
        return folders.stream().map(shop::resolve).filter(Files::isDirectory).flatMap(folder -> {
            try (Stream<Path> files = Files.list(folder)) {
                return files.sorted().toList().stream();
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }).toList();
    }

    private static Path made() {
        Path folder = SharedFolder.made("icequill-demo-shop");
        imported(files(folder));
        return folder;
    }
}
