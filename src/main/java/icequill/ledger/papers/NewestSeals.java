package icequill.ledger.papers;

import icequill.files.disk.OwnersOnly;
import icequill.ledger.store.Flush;
import icequill.problem.Place;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The newest seal of each series, kept beside the papers: a small file each. A database that was put back to an earlier day, or another
 * one, is known by it.
 *
 * @param folder of all issued papers
 */
public record NewestSeals(Path folder) {

    private static final Pattern FORM = Pattern
            .compile("(" + Series.FORM + "-\\d{5,10}) ([0-9a-f]{64})\\s*");
    private static final int LONGEST = 200;

    /** The last paper that was issued in a series, and its seal. */
    public record Mark(String number, String seal) {

        public int position() {
            return Integer.parseInt(number.substring(number.lastIndexOf('-') + 1));
        }
    }

    public Path place() {
        return folder.resolve(".seals");
    }

    Place placeOf(Series series) {
        return Place.ofFile(file(series).toString());
    }

    /** Notes a paper, unless a later one of its series is noted already. */
    public void note(Series series, int position, String seal) throws IOException {
        if (of(series).filter(mark -> mark.position() >= position).isEmpty()) {
            put(series, position, seal);
        }
    }

    /** Notes where a series stands, whatever was noted before. */
    public void put(Series series, int position, String seal) throws IOException {
        OwnersOnly.folder(place());
        Path unfinished = place().resolve("." + series.text() + "." + UUID.randomUUID());
        Flush.write(unfinished,
                (series.number(position) + " " + seal + "\n").getBytes(StandardCharsets.UTF_8));
        Files.move(unfinished, file(series), StandardCopyOption.ATOMIC_MOVE);
    }

    /** What is noted of a series; empty also where the file cannot be understood. */
    public Optional<Mark> of(Series series) throws IOException {
        return read(file(series));
    }

    /** What is noted of all series. */
    List<Mark> all() throws IOException {
        if (!Files.isDirectory(place())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(place())) {
            List<Path> sorted = files.filter(file -> !String.valueOf(file.getFileName()).startsWith(".")).sorted()
                    .toList();
            Stream.Builder<Mark> marks = Stream.builder();
            for (Path file : sorted) {
                read(file).ifPresent(marks);
            }
            return marks.build().toList();
        }
    }

    private Path file(Series series) {
        return place().resolve(series.text() + ".txt");
    }

    private static Optional<Mark> read(Path file) throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) > LONGEST) {
            return Optional.empty();
        }
        Matcher form = FORM.matcher(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
        return form.matches() ? Optional.of(new Mark(form.group(1), form.group(2))) : Optional.empty();
    }
}
