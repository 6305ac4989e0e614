package icequill.office.quoting;

import icequill.agreement.UsualTerms;
import icequill.answer.shown.QuoteStanding;
import icequill.document.MaintenanceQuote;
import icequill.document.RepairQuote;
import icequill.files.form.Form;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.life.quote.QuoteEvent;
import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.life.quote.QuoteEvent.Refusal;
import icequill.life.quote.QuoteState;
import icequill.office.writing.PaperNumbers;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import icequill.shop.life.JobLife;
import icequill.shop.life.QuoteLife;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;

/** The office that notes what customers say to quotes, and makes agreements and jobs of those that they accept. */
public final class QuoteLifeOffice {

    private static final EnumSet<PaperKind> KINDS = EnumSet.of(PaperKind.MAINTENANCE_QUOTE, PaperKind.REPAIR_QUOTE);
    private static final Place DAY = new Place("", 0, "day");

    private final ShopBook book;
    private final LocalDate today;

    private QuoteLifeOffice(ShopBook book) {
        this.book = book;
        this.today = ShopDay.today(book.folder(), book.clock());
    }

    public static QuoteLifeOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static QuoteLifeOffice of(ShopBook book) {
        return new QuoteLifeOffice(book);
    }

    /**
     * Where a quote stands.
     *
     * @param number however it is typed
     */
    public Validated<QuoteStanding> standing(String number) {
        return book.read(open -> found(open, number)).map(QuoteStanding::of);
    }

    /** What an agreement says that a quote becomes, unless something else is said. */
    public UsualTerms usual() {
        return BookForms.shop(book).agreed();
    }

    /** The customer does not want it. */
    public Validated<QuoteStanding> decline(String number, Refusal no) {
        return ShopDay.notAhead(no.day(), today, DAY).then(day -> book.write(open -> found(open, number)
                .then(life -> noted(open, life, no, Optional.empty()))));
    }

    /**
     * The customer takes it. A maintenance quote becomes an agreement in the same moment, and that of a repair a job.
     *
     * @param wish what an agreement has that the quote does not say
     */
    public Validated<QuoteStanding> accept(String number, Acceptance yes, AgreementWish wish) {
        BookForms forms = new BookForms(book);
        ShopFolder shop = forms.shop();
        return ShopDay.notAhead(yes.day(), today, DAY)
                .then(day -> book.read(open -> toMake(open, number, yes, wish, shop.agreed())))
                .then(make -> make.form().map(form -> NewAgreement.of(book, shop, form, yes.day())
                        .then(entry -> stored(forms, make, yes, Optional.of(entry))))
                        .orElseGet(() -> stored(forms, make, yes, Optional.empty())));
    }

    /**
     * What an acceptance makes.
     *
     * @param quote by number
     * @param form of a new agreement; empty where there is one already, and for the quote of a repair
     * @param existing the agreement that there is already
     */
    private record Making(String quote, Optional<Form> form, Optional<String> existing) {}

    private static Validated<Making> toMake(Reading open, String number, Acceptance yes, AgreementWish wish,
            UsualTerms usual) {
        return found(open, number).then(life -> QuoteState.step(life.state(), yes).then(after -> {
            String quote = life.issued().number();
            if (!(life.paper() instanceof MaintenanceQuote paper)) {
                return Validated.valid(new Making(quote, Optional.empty(), Optional.empty()));
            }
            return wish.existing().map(name -> existing(open, life, name)
                    .map(found -> new Making(quote, Optional.empty(), Optional.of(found))))
                    .orElseGet(() -> request(open, life).map(request -> new Making(quote,
                            Optional.of(new AcceptedPlan(life, paper, request, yes, usual).form(wish, open)),
                            Optional.empty())));
        }));
    }

    /** An agreement of the quote's site. */
    private static Validated<String> existing(Reading open, QuoteLife life, String name) {
        return open.entries().agreement(name)
                .filter(entry -> life.issued().origin().site().filter(entry.site()::equals).isPresent())
                .map(entry -> Validated.valid(entry.number()))
                .orElseGet(() -> Validated.invalid(Problem.unknownName(new Place("", 0, "existing"),
                        "agreement of this site", name, life.issued().origin().site().stream()
                                .flatMap(site -> open.entries().agreementsAt(site).stream())
                                .map(AgreementEntry::number).toList())));
    }

    /** What the quote was made from; that of a quote from before its steps were kept stands under its number, where it was typed. */
    private static Validated<String> request(Reading open, QuoteLife life) {
        String number = life.issued().number();
        return life.form().or(() -> open.entries().requests().stream()
                .filter(entry -> entry.id().equals(QuoteOffice.request(number)) && !entry.isForgotten())
                .map(RequestEntry::data).findFirst())
                .<Validated<String>>map(Validated::valid)
                .orElseGet(() -> Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE,
                        "the book does not have what " + number + " was made from",
                        "its request, handed over as maintenance-request with id: " + QuoteOffice.request(number))));
    }

    private Validated<QuoteStanding> stored(BookForms forms, Making making, Acceptance yes,
            Optional<AgreementEntry> agreement) {
        return book.write(open -> forms.unchanged(open, () -> found(open, making.quote())
                .then(life -> agreement.map(entry -> open.register().add(entry)).map(added -> added.then(
                        entry -> noted(open, life, yes, Optional.of(entry.number()))))
                        .orElseGet(() -> noted(open, life, yes, making.existing())))));
    }

    private static Validated<QuoteStanding> noted(Transaction open, QuoteLife life, QuoteEvent event,
            Optional<String> made) {
        return QuoteState.step(life.state(), event).then(after -> {
            open.lifeSteps().add(life.next(event, made));
            if (event instanceof Acceptance yes && life.paper() instanceof RepairQuote) {
                open.lifeSteps().add(JobLife.begun(life, yes.day()));
            }
            return QuoteLife.of(open, life.issued());
        }).map(QuoteStanding::of);
    }

    private static Validated<QuoteLife> found(Reading open, String number) {
        Validated<IssuedPaper> paper = PaperNumbers.find(open, number, KINDS);
        return paper.then(issued -> QuoteLife.of(open, issued));
    }
}
