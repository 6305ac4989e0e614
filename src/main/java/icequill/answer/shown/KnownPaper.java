package icequill.answer.shown;

import icequill.answer.BookedPaper;
import icequill.answer.PaidSheet;
import icequill.answer.PaperAmounts;
import icequill.document.Paper;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that the book knows of a paper.
 *
 * @param matter empty for a paper whose data cannot be read, which an audit tells
 * @param amounts every amount of it, by name
 * @param paid what became of it in money; empty for what asks for none
 * @param credits that give it back, in whole or in part
 */
public record KnownPaper(BookedPaper issued, PaperOrigin origin, Optional<PaperMatter> matter,
        Map<String, Object> amounts, Optional<PaidSheet> paid, List<BookedPaper> credits) {

    public KnownPaper {
        credits = List.copyOf(credits);
    }

    /** @param paper what is on it; empty where that cannot be read */
    static KnownPaper of(Reading open, IssuedPaper issued, Optional<Paper> paper) {
        return new KnownPaper(BookedPaper.of(issued, open), PaperOrigin.of(open, issued), paper.map(PaperMatter::of),
                paper.map(PaperAmounts::of).orElse(Map.of()), PaidSheet.of(open, issued),
                open.papers().creditsOf(issued.number()).stream().map(credit -> BookedPaper.of(credit, open))
                        .toList());
    }
}
