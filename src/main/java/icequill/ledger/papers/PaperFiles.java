package icequill.ledger.papers;

import icequill.files.disk.Folder;
import icequill.files.disk.Hash;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The PDFs of issued papers. A paper's file is first forced to the disk beside the others under a name that says its number and
 * hash, and moved to its place once its row is stored. Whatever stops the program in between, the name tells later what to do.
 *
 * @param folder of all issued papers
 */
public record PaperFiles(Path folder) {

    private static final Pattern UNFINISHED = Pattern.compile("(.+)~([0-9a-f]{64})\\.pdf");

    /** A file that was not moved to its place yet. */
    record Unfinished(Path file, String number, String hash) {}

    public Path unfinishedFolder() {
        return folder.resolve(".unfinished");
    }

    /** Stands here while a restore has moved the papers to their place, and not the database yet. */
    public Path restoring() {
        return folder.resolve(".restoring");
    }

    public Path place(Series series, String number) {
        return place(series.text(), number);
    }

    private Path place(String series, String number) {
        return folder.resolve(series).resolve(number + ".pdf");
    }

    public Path unfinished(String number, String hash) {
        return unfinishedFolder().resolve(number + "~" + hash + ".pdf");
    }

    public NewestSeals seals() {
        return new NewestSeals(folder);
    }

    /** Whether a folder may be that of a series; what begins with a point is the program's own. */
    public static boolean isOfSeries(Path folder) {
        return Files.isDirectory(folder) && !String.valueOf(folder.getFileName()).startsWith(".");
    }

    /** The papers in the folder of a series, by number. */
    public static List<Path> inSeries(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".pdf"))
                    .sorted(Comparator.<Path>comparingInt(file -> file.toString().length())
                            .thenComparing(Comparator.naturalOrder()))
                    .toList();
        }
    }

    /** Moves a file to its place; done already is done, and what lies there is never replaced. */
    void finish(Series series, String number, String hash) throws IOException {
        finish(place(series, number), number, hash);
    }

    private void finish(Path target, String number, String hash) throws IOException {
        Folder.madeFor(target);
        if (Files.exists(target)) {
            if (Hash.of(Files.readAllBytes(target)).equals(hash)) {
                discard(number, hash);
            }
            return;
        }
        try {
            Files.move(unfinished(number, hash), target, StandardCopyOption.ATOMIC_MOVE);
        } catch (NoSuchFileException moved) {
            // Another process that opened the book in between may have been quicker.
            if (!Files.exists(target)) {
                throw moved;
            }
        }
    }

    void discard(String number, String hash) {
        try {
            Files.deleteIfExists(unfinished(number, hash));
        } catch (IOException stays) {
            // Removed when the book is next opened, since it has no row.
        }
    }

    /**
     * Moves what waits to its place, as far as it is whole, and nothing lies there. Only where no book can tell whether it was issued.
     *
     * @return the numbers
     */
    public List<String> finishWaiting() throws IOException {
        List<String> moved = new ArrayList<>();
        for (Unfinished left : unfinished()) {
            Optional<Path> target = Series.textOf(left.number()).map(series -> place(series, left.number()));
            if (target.filter(Files::notExists).isPresent()
                    && Hash.of(Files.readAllBytes(left.file())).equals(left.hash())) {
                finish(target.get(), left.number(), left.hash());
                moved.add(left.number());
            }
        }
        return moved;
    }

    /** The bytes of a paper, wherever they lie. */
    public byte[] read(Series series, String number, String hash) throws IOException {
        try {
            return Files.readAllBytes(place(series, number));
        } catch (IOException notYet) {
            return readUnfinished(series, number, hash);
        }
    }

    public List<Unfinished> unfinished() throws IOException {
        if (!Files.isDirectory(unfinishedFolder())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(unfinishedFolder())) {
            return files.sorted().flatMap(file -> named(file).stream()).toList();
        }
    }

    /**
     * Finishes what a stop left undone: a file whose paper is in the book goes to its place, any other is removed. Nobody else may
     * be issuing.
     *
     * @param row finds a paper of the book by its number
     */
    public void recover(Function<String, Optional<PaperRow>> row) throws IOException {
        for (Unfinished left : unfinished()) {
            Optional<PaperRow> paper = row.apply(left.number())
                    .filter(found -> found.pdfHash().equals(left.hash()));
            if (paper.isEmpty()) {
                Files.deleteIfExists(left.file());
            } else {
                finish(paper.get().series(), left.number(), left.hash());
            }
        }
    }

    private byte[] readUnfinished(Series series, String number, String hash) throws IOException {
        try {
            return Files.readAllBytes(unfinished(number, hash));
        } catch (IOException moved) {
            // Perhaps just now, between the two looks.
            return Files.readAllBytes(place(series, number));
        }
    }

    private static Optional<Unfinished> named(Path file) {
        Matcher name = UNFINISHED.matcher(String.valueOf(file.getFileName()));
        return name.matches()
                ? Optional.of(new Unfinished(file, name.group(1), name.group(2)))
                : Optional.empty();
    }
}
