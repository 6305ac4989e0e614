package icequill.answer.shown;

import icequill.answer.BookedPaper;
import icequill.answer.PaidSheet;
import icequill.answer.amounts.PaperAmounts;
import icequill.answer.mail.MailEntry;
import icequill.document.Paper;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.shop.life.QuoteLife;
import java.util.List;
import java.util.Optional;

/**
 * All that the book knows of a paper.
 *
 * @param matter empty for a paper whose data cannot be read, which an audit tells
 * @param amounts every amount of it; empty where its figures have a form of their own
 * @param paid what became of it in money; empty for what asks for none
 * @param credits that give it back, in whole or in part
 * @param quote where it stands; empty for any other paper
 * @param mails about it, in their order: what went out, when and to whom
 */
public record KnownPaper(BookedPaper issued, PaperOrigin origin, Optional<PaperMatter> matter,
        Optional<PaperAmounts> amounts, Optional<PaidSheet> paid, List<BookedPaper> credits,
        Optional<QuoteStanding> quote, List<MailEntry> mails) {

    public KnownPaper {
        credits = List.copyOf(credits);
        mails = List.copyOf(mails);
    }

    /** @param paper what is on it; empty where that cannot be read */
    static KnownPaper of(Reading open, IssuedPaper issued, Optional<Paper> paper, List<MailEntry> mails) {
        return new KnownPaper(BookedPaper.of(issued, open), PaperOrigin.of(open, issued), paper.map(PaperMatter::of),
                paper.flatMap(PaperAmounts::of), PaidSheet.of(open, issued, paper),
                open.papers().creditsOf(issued.number()).stream().map(credit -> BookedPaper.of(credit, open))
                        .toList(),
                paper.flatMap(read -> QuoteLife.of(open, issued, read).found()).map(QuoteStanding::of), mails);
    }
}
