package icequill.office.demo;

import icequill.files.disk.OwnersOnly;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShippedFiles;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;

/** Makes shop folders. */
public final class NewShop {

    private NewShop() {
    }

    /**
     * Makes a folder with everything a shop starts from, its book too.
     *
     * @param folder must not exist or be empty
     * @param demo whether to fill it with an invented shop, whose forms are taken in at a moment of its own
     */
    public static Validated<Path> create(Path folder, boolean demo) {
        if (!isFree(folder)) {
            return Validated.invalid(new Problem(Code.ALREADY_EXISTS, Place.ofFile(folder.toString()),
                    "the folder holds something already", "a new or empty folder"));
        }
        return (demo ? ShippedFiles.copyDemo(folder) : ShippedFiles.copyStarter(folder)).then(made -> {
            try {
                OwnersOnly.folder(made.resolve("templates"));
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
            return ShopBook.of(made, demo ? DemoForms.CLOCK : Clock.systemUTC())
                    .together(book -> demo
                            ? DemoForms.taken(book).then(forms -> new DemoCalls(book).taken())
                            : Validated.valid(true))
                    .map(taken -> made);
        });
    }

    private static boolean isFree(Path folder) {
        if (!Files.exists(folder)) {
            return true;
        }
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.findAny().isEmpty();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
