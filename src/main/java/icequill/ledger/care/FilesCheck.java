package icequill.ledger.care;

import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperRows;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Looks for files of which the book knows nothing. */
public record FilesCheck(Handle handle, PaperFiles files) {

    private static final String ENDING = ".pdf";

    /** Files without a row. Those of papers that were issued since the handle's moment are among them. */
    public List<Path> unknown() throws IOException {
        try (Stream<Path> all = Files.walk(files.folder())) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.startsWith(files.unfinishedFolder())
                            && !file.startsWith(files.seals().place()) && !file.equals(files.restoring()))
                    .filter(this::isUnknown).sorted().toList();
        }
    }

    boolean isUnknown(Path file) {
        String name = String.valueOf(file.getFileName());
        if (!name.endsWith(ENDING)) {
            return true;
        }
        String number = name.substring(0, name.length() - ENDING.length());
        return PaperRows.seriesOf(handle, number).filter(series -> files.place(series, number).equals(file)).isEmpty();
    }

    static Problem finding(Path file) {
        return new Problem(Code.BOOK_DAMAGED, Place.ofFile(file.toString()), "the book knows of no such file",
                "papers that were issued, and nothing else, in this folder");
    }
}
