package icequill.ledger;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Looks for files of which the book knows nothing. */
final class FilesCheck {

    private final Handle handle;
    private final PaperFiles files;
    private final Problems findings;

    FilesCheck(Handle handle, PaperFiles files, Problems findings) {
        this.handle = handle;
        this.files = files;
        this.findings = findings;
    }

    void run() {
        try (Stream<Path> all = Files.walk(files.folder())) {
            all.filter(Files::isRegularFile).sorted().forEach(this::check);
        } catch (IOException unreadable) {
            findings.add(Faults.ofFile(unreadable));
        }
    }

    private void check(Path file) {
        String name = String.valueOf(file.getFileName());
        if (file.startsWith(files.unfinishedFolder())) {
            // One that somebody is issuing right now has no row yet; one of a row is found by its hash.
            return;
        }
        Optional<PaperRow> row = name.endsWith(".pdf")
                ? PaperRows.byNumber(handle, name.substring(0, name.length() - ".pdf".length()))
                : Optional.empty();
        if (row.filter(found -> files.place(found.series(), found.number()).equals(file)).isEmpty()) {
            findings.add(Code.BOOK_DAMAGED, Place.ofFile(file.toString()), "the book knows of no such file",
                    "papers that were issued, and nothing else, in this folder");
        }
    }
}
