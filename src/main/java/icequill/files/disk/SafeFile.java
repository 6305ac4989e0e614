package icequill.files.disk;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/** Writes files so that a reader sees the whole new one or the old one, whatever happens in between. */
public final class SafeFile {

    private SafeFile() {
    }

    /** A problem when there is such a file already. */
    public static Optional<Problem> inTheWay(Path target) {
        return Files.exists(target)
                ? Optional.of(new Problem(Code.ALREADY_EXISTS, Place.ofFile(target.toString()),
                        "the file exists already", "another number, or move the file away first"))
                : Optional.empty();
    }

    /** Fills a file. */
    @FunctionalInterface
    public interface Filling {
        void fill(OutputStream out) throws IOException;
    }

    /**
     * Writes to a temporary file beside the target, forces it to the disk, and moves it into place. Folders are made as
     * needed. File and folders are their owner's alone ({@link OwnersOnly}).
     *
     * @param replace whether an existing file may be replaced; otherwise it is a problem
     */
    public static Validated<Path> write(Path target, byte[] bytes, boolean replace) {
        return write(target, replace, out -> out.write(bytes));
    }

    /** The same for what does not fit into memory. */
    public static Validated<Path> write(Path target, boolean replace, Filling filling) {
        Optional<Problem> inTheWay = replace ? Optional.empty() : inTheWay(target);
        if (inTheWay.isPresent()) {
            return Validated.invalid(inTheWay.get());
        }
        try {
            OwnersOnly.folder(Objects.requireNonNull(target.toAbsolutePath().getParent(), "a file lies in a folder"));
            try (Unfinished file = Unfinished.of(target)) {
                try (OutputStream out = file.out()) {
                    filling.fill(out);
                }
                file.finish();
            }
            return Validated.valid(target);
        } catch (IOException | UncheckedIOException failed) {
            return Validated.invalid(new Problem(Code.CANNOT_WRITE, Place.ofFile(target.toString()),
                    "cannot write: " + failed, "free space, and a folder that may be written to"));
        }
    }
}
