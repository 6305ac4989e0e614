package icequill.office;

import icequill.document.Paper;
import icequill.files.PaperJson;
import icequill.ledger.IssuedPaper;
import icequill.ledger.Reading;
import icequill.problem.Checked;

/** The papers of the book as they were issued. */
final class BookedPapers {

    private BookedPapers() {
    }

    /** The paper of a number as it was issued. */
    static Checked<Paper> paper(Reading open, IssuedPaper issued) {
        return open.papers().data(issued.number()).then(data -> PaperJson.read(data, issued.number()));
    }
}
