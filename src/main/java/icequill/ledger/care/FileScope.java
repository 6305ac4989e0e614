package icequill.ledger.care;

import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.Series;
import java.nio.file.Files;
import java.util.Optional;

/**
 * Which papers' files lie here. Offices that share a book may each have a folder of their own.
 *
 * @param own the office whose papers lie here for certain; empty where all do
 */
public record FileScope(PaperFiles files, Optional<String> own) {

    /** Those of which this folder must have the files, whatever else does. */
    boolean isOwn(Series series) {
        return own.isEmpty() || own.get().equals(series.office());
    }

    /** Those of another office lie here when there is a folder for them. */
    boolean isHere(Series series) {
        return isOwn(series)
                || Files.isDirectory(files.folder().resolve(series.text()));
    }
}
