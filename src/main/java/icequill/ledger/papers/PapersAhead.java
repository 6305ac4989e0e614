package icequill.ledger.papers;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * Holds the book against the papers that lie beside it: a book that is older than they are, or another shop's, would issue their
 * numbers again.
 */
public record PapersAhead(Handle handle, PaperFiles files) {

    private static final String WAY = "the newest backup, or: icequill restore --from-papers";

    /** The problems as a reader of the book sees them now. */
    public static List<Problem> of(Jdbi reader, PaperFiles files) throws IOException {
        try (Handle handle = reader.open()) {
            return new PapersAhead(handle, files).problems();
        }
    }

    /** What shows that the book is not that of the papers, one problem a series. */
    List<Problem> problems() throws IOException {
        List<Problem> found = new ArrayList<>();
        for (NewestSeals.Mark mark : files.seals().all()) {
            wrong(mark).ifPresent(found::add);
        }
        for (Path file : nextFiles()) {
            String number = numberOf(file);
            // Looked for after its file, which is moved to its place only when the row is stored.
            if (sealOf(number).isEmpty() && found.stream().noneMatch(known -> isOfSameSeries(known, number))) {
                found.add(older(number, Place.ofFile(file.toString())));
            }
        }
        return found;
    }

    /** A problem when the paper that is next in a series was issued already, as the files tell. */
    static Optional<Problem> taken(PaperFiles files, Series series, int position, String head) throws IOException {
        String number = series.number(position);
        Path place = files.place(series, number);
        if (Files.exists(place)) {
            return Optional.of(older(number, Place.ofFile(place.toString())));
        }
        Optional<NewestSeals.Mark> mark = files.seals().of(series);
        if (mark.filter(newest -> newest.position() >= position).isPresent()) {
            return Optional.of(older(mark.get().number(), files.seals().placeOf(series)));
        }
        return mark.filter(newest -> newest.position() == position - 1 && !newest.seal().equals(head))
                .map(newest -> foreign(newest.number(), files.seals().placeOf(series)));
    }

    private Optional<Problem> wrong(NewestSeals.Mark mark) {
        Optional<String> seal = sealOf(mark.number());
        Place place = Place.ofFile(files.seals().place().toString());
        if (seal.isEmpty()) {
            // A series may go on after a paper that could not be taken out of its PDF.
            return SeriesRows.heads(handle).stream().anyMatch(
                    head -> head.series().has(mark.number()) && head.papers() >= mark.position())
                            ? Optional.empty()
                            : Optional.of(older(mark.number(), place));
        }
        return seal.get().equals(mark.seal()) ? Optional.empty() : Optional.of(foreign(mark.number(), place));
    }

    private static boolean isOfSameSeries(Problem known, String number) {
        return known.message().contains(number.substring(0, number.lastIndexOf('-') + 1));
    }

    private Optional<String> sealOf(String number) {
        return handle.createQuery("SELECT seal FROM paper WHERE number = :number").bind("number", number)
                .mapTo(String.class).findOne();
    }

    /** Of each folder of a series the file that the book would write next, or any where it knows of no such series. */
    private List<Path> nextFiles() throws IOException {
        Map<String, Integer> next = new HashMap<>();
        SeriesRows.heads(handle).forEach(head -> next.put(head.series().text(), head.papers() + 1));
        List<Path> found = new ArrayList<>();
        try (Stream<Path> folders = Files.list(files.folder())) {
            for (Path folder : folders.filter(PaperFiles::isOfSeries).sorted().toList()) {
                Integer position = next.get(String.valueOf(folder.getFileName()));
                if (position != null) {
                    Path file = folder.resolve(Series.number(String.valueOf(folder.getFileName()), position) + ".pdf");
                    if (Files.exists(file)) {
                        found.add(file);
                    }
                } else {
                    PaperFiles.inSeries(folder).stream().findFirst().ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private static String numberOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.length() - ".pdf".length());
    }

    private static Problem older(String number, Place place) {
        return new Problem(Code.BOOK_DAMAGED, place,
                "the book is older than its papers: " + number + " was issued, and the book does not know it", WAY);
    }

    private static Problem foreign(String number, Place place) {
        return new Problem(Code.BOOK_DAMAGED, place,
                "the papers are those of another book: " + number + " bears another seal here than in the book",
                "the book that issued them; an office of its own (book: office: in shop.yaml) begins its own numbers");
    }
}
