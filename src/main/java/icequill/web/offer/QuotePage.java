package icequill.web.offer;

import icequill.answer.shown.PaperSheet;
import icequill.office.care.ShowOffice;
import icequill.office.care.Shows;
import icequill.office.quoting.QuoteOffice;
import icequill.office.quoting.QuotedPaper;
import icequill.render.page.Page;
import icequill.render.view.MaintenanceQuoteView;
import icequill.shop.FormName;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.PageDraft;
import java.util.Locale;
import java.util.Optional;

/** A quote that was issued: what it offers, how that was figured, and its sheets. */
public final class QuotePage implements icequill.web.page.Page {

    /**
     * What its page shows.
     *
     * @param quote empty where it is of a repair
     * @param isLapsed whether its last day has gone by
     * @param isAgain whether somebody sent once more what it was made from
     * @param hasSheets whether the book has the request that it was made from
     */
    public record Shown(PaperSheet paper, Optional<Page> quote, boolean isLapsed, boolean isAgain,
            boolean hasSheets, boolean hasBrushing) {}

    @Override
    public Answer answer(Asked asked) {
        QuoteOffice office = QuoteOffice.of(asked.book());
        String number = asked.part("number");
        return Answer.of(ShowOffice.of(asked.book()).show(new FormName.InBook(number), Shows.QUOTE,
                Optional.of(asked.reader().language())).map(shown -> shown.paper().orElseThrow()),
                paper -> new Answer.Shown("quote",
                        new Shown(paper, office.maintenance(number, asked.reader().language())
                                .found().map(MaintenanceQuoteView::of),
                                paper.data().matter().flatMap(matter -> matter.validUntil())
                                        .filter(asked.reader().today()::isAfter).isPresent(),
                                PageDraft.isAgain(asked),
                                office.hasSheet(number, QuotedPaper.COMPARISON),
                                office.hasSheet(number, QuotedPaper.BRUSHING)),
                        paper.data()));
    }

    /** A sheet that goes with it. */
    public static Answer sheet(Asked asked, QuotedPaper which) {
        String number = asked.part("number");
        return Answer.of(QuoteOffice.of(asked.book()).sheet(number, which),
                pdf -> new Answer.Sent(pdf, which.name().toLowerCase(Locale.ROOT) + "-" + QuoteOffice.request(number)
                        + ".pdf"));
    }
}
