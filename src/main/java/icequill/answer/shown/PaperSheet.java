package icequill.answer.shown;

import icequill.answer.mail.MailTelling;
import icequill.document.Paper;
import icequill.files.answer.Sheet;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.shop.BookedPapers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A paper of the book, for the screen and as data.
 *
 * @param lines empty for a paper without lines of its own, or one whose data cannot be read, which an audit tells
 * @param choices of a maintenance quote
 */
public record PaperSheet(KnownPaper data, Optional<PricedLines> lines, Optional<QuoteChoices> choices)
        implements
        Sheet {

    /**
     * An issued paper as the book knows it.
     *
     * @param telling of the mails about it
     */
    public static PaperSheet of(Reading open, IssuedPaper issued, MailTelling telling) {
        Optional<Paper> paper = BookedPapers.paper(open, issued).found();
        return new PaperSheet(KnownPaper.of(open, issued, paper, telling.about(open, issued.number())),
                paper.flatMap(PricedLines::of),
                paper.flatMap(QuoteChoices::of));
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>(data.issued().rows());
        rows.addAll(data.origin().subjects());
        data.matter().ifPresent(said -> rows.addAll(said.rows()));
        rows.addAll(data.origin().marks());
        data.credits().forEach(credit -> rows.add(List.of("givenBackBy", credit.title())));
        data.quote().ifPresent(standing -> rows.addAll(standing.rows()));
        data.paid().ifPresent(money -> rows.addAll(money.rows()));
        data.mails().forEach(mail -> rows.add(List.of("mail", mail.line())));
        return rows;
    }
}
