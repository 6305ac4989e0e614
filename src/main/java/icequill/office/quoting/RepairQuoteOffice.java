package icequill.office.quoting;

import icequill.answer.BookedPaper;
import icequill.answer.PriceSheet;
import icequill.office.Office;
import icequill.office.asking.AskingOffice;
import icequill.office.asking.Draft;
import icequill.office.asking.TypedVisit;
import icequill.office.billing.IssueOffice;
import icequill.office.billing.IssueOptions;
import icequill.party.Language;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.Optional;

/** The office where the quote of a repair is typed. */
public final class RepairQuoteOffice {

    private final ShopBook book;

    private RepairQuoteOffice(ShopBook book) {
        this.book = book;
    }

    public static RepairQuoteOffice of(ShopBook book) {
        return new RepairQuoteOffice(book);
    }

    /**
     * What it comes to by the rates of a day.
     *
     * @param repair by the keys of a planned visit's form
     */
    public Validated<PriceSheet> price(Draft repair, LocalDate day, Language language) {
        return Office.of(book).priceOfQuote(AskingOffice.of(book).typed(repair).name(),
                new PaperOptions(Optional.empty(), day, Optional.of(language), Extras.NONE));
    }

    /** Stores it as a visit to come, and issues its quote, or does neither. */
    public Validated<BookedPaper> issue(Draft repair, IssueOptions wish) {
        AskingOffice asking = AskingOffice.of(book);
        TypedVisit visit = asking.typed(repair);
        return book.write(open -> asking.store(visit)
                .then(stored -> IssueOffice.of(book).quote(new FormName.InBook(stored.visit()), wish)));
    }
}
