package icequill.office.billing;

import icequill.answer.RecordedVisit;
import icequill.answer.WithdrawnVisit;
import icequill.files.form.FormKind;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.FormName;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.VisitLoader;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** The office that records visits in the book, and takes them back. */
public final class RecordOffice {

    private final ShopBook book;

    private RecordOffice(ShopBook book) {
        this.book = book;
    }

    public static RecordOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static RecordOffice of(ShopBook book) {
        return new RecordOffice(book);
    }

    /**
     * Records a visit, done or planned, priced first so that nothing is recorded that could not be billed. Recorded again, it takes
     * the place of what was recorded, as long as it was not billed.
     */
    public Validated<RecordedVisit> record(FormName name) {
        BookForms forms = new BookForms(book);
        ShopFolder shop = forms.shop();
        VisitBooking booking = new VisitBooking(book);
        Problems problems = new Problems();
        Optional<VisitBooking.Bookable> visit = shop.form(name, List.of(FormKind.VISIT, FormKind.PLANNED_VISIT))
                .flatMap(form -> new VisitLoader(shop).read(form, problems)
                        .flatMap(hand -> problems.take(booking.bookable(form, hand))));
        return GlyphCheck.report(shop, problems).or(visit::orElseThrow).then(bookable -> book
                .write(open -> forms.unchanged(open, () -> booking.store(bookable, open))));
    }

    /** Records a sale without a visit. */
    public Validated<RecordedVisit> record(SaleWish sale) {
        return record(sale.form(book));
    }

    /**
     * Takes a recorded visit back that is not billed; the book keeps it, and why.
     *
     * @param reason not blank
     */
    public Validated<WithdrawnVisit> withdraw(String visit, String reason) {
        if (reason.isBlank()) {
            return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no reason is given",
                    "--reason, which the book keeps"));
        }
        ShopFolder shop = BookForms.shop(book);
        return shop.shop().map(known -> withdraw(visit, reason, known))
                .orElseGet(() -> new Validated.Invalid<>(shop.problems()));
    }

    private Validated<WithdrawnVisit> withdraw(String visit, String reason, Shop shop) {
        return book.write(open -> RecordedVisits.known(open, visit)
                .then(entry -> RecordedVisits.unlessBilled(open, entry))
                .then(entry -> AnsweredCalls.in(open, shop).withdrawn(entry))
                .then(entry -> open.register().withdraw(entry.id(), reason)
                        .map(done -> new WithdrawnVisit(entry.id(), entry.site(), entry.began().toLocalDate(),
                                reason))));
    }

    /** A visit, planned or done, whose form may be put in its place: it is neither withdrawn, nor billed, nor forgotten. */
    public static Validated<VisitEntry> changeable(Reading open, String visit) {
        return RecordedVisits.known(open, visit).then(entry -> VisitBooking.standing(open, entry))
                .then(entry -> RecordedVisits.unlessBilled(open, entry))
                .then(entry -> entry.isForgotten()
                        ? Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                                "what visit \"" + visit + "\" said was forgotten with its customer", ""))
                        : Validated.valid(entry));
    }

    /** The visits that are recorded and have no invoice that stands, by their beginning. */
    public Validated<List<String>> unbilled() {
        return book.read(open -> Validated.valid(open.entries().visits().stream().map(VisitEntry::id)
                .filter(id -> open.entries().withdrawal(id).isEmpty() && StandingInvoices.visit(open, id).isEmpty())
                .toList()));
    }
}
