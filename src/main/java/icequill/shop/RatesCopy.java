package icequill.shop;

import icequill.files.disk.Folder;
import icequill.files.disk.OwnersOnly;
import icequill.files.pricing.RatesFolder;
import icequill.files.pricing.RatesVersion;
import icequill.ledger.store.Caches;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/** A version of the rates as files, in a cache: made once, and looked at before it is used again. */
final class RatesCopy {

    private RatesCopy() {
    }

    /**
     * The folder that holds the files of a version.
     *
     * @param shop whose cache will do where the user's does not
     */
    static Validated<Path> of(RatesVersion version, Path shop) {
        List<String> tried = new ArrayList<>();
        for (Path cache : Caches.of(shop.resolve("shop.yaml").toAbsolutePath())) {
            Path copy = cache.resolve("rates-" + version.hash());
            try {
                if (!isWhole(copy, version)) {
                    make(copy, version);
                }
                return Validated.valid(copy);
            } catch (IOException unsuitable) {
                tried.add(copy + ": " + unsuitable);
            }
        }
        return Validated.invalid(new Problem(Code.CANNOT_WRITE, Place.NOWHERE,
                "the rates in force can be laid into no folder; tried " + String.join("; ", tried),
                "a folder that may be written to"));
    }

    private static boolean isWhole(Path copy, RatesVersion version) {
        return Files.isDirectory(copy) && new RatesFolder(copy).version().map(RatesVersion::hash)
                .equals(Validated.valid(version.hash()));
    }

    /** Beside its place, and moved there when it is whole; another process may be quicker. */
    private static void make(Path copy, RatesVersion version) throws IOException {
        Path beside = copy.resolveSibling(copy.getFileName() + "." + ProcessHandle.current().pid());
        Folder.delete(beside);
        OwnersOnly.folder(beside);
        try {
            if (new RatesFolder(beside).write(version) instanceof Validated.Invalid<Path>(List<Problem> problems)) {
                throw new IOException(problems.getFirst().text());
            }
            Folder.delete(copy);
            Files.move(beside, copy, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException failed) {
            if (!isWhole(copy, version)) {
                throw failed;
            }
        } finally {
            Folder.delete(beside);
        }
    }
}
