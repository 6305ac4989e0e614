package icequill.shop;

import icequill.document.Paper;
import icequill.files.paper.PaperJson;
import icequill.files.yaml.Remembered;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.Optional;

/** The papers of the book as they were issued. */
public final class BookedPapers {

    private static final String OFFER = "\"early\"";

    /** The invoices that a run of many is held against, some times over. */
    private static final int MOST = 500;
    /** By their seals: what was issued never changes, and a run asks several times for the same. */
    private static final Remembered<String, Validated<Paper>> KNOWN = new Remembered<>(MOST);

    private BookedPapers() {
    }

    /** Whether something is taken off the paper for paying early; without reading all of it. */
    public static boolean offersEarly(Reading open, IssuedPaper issued) {
        return open.papers().data(issued.number()).found().filter(data -> data.contains(OFFER)).isPresent();
    }

    /** The last day of a quote, without reading all of it; empty for any other paper. */
    public static Optional<LocalDate> lastDay(Reading open, IssuedPaper issued) {
        return open.papers().data(issued.number()).found()
                .flatMap(data -> PaperJson.text(data, "validUntil")).map(LocalDate::parse);
    }

    /** The paper of a number as it was issued. */
    public static Validated<Paper> paper(Reading open, IssuedPaper issued) {
        return KNOWN.of(issued.seal(),
                () -> open.papers().data(issued.number()).then(data -> PaperJson.read(data, issued.number())));
    }
}
