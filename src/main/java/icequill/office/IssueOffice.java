package icequill.office;

import icequill.document.Paper;
import icequill.files.PaperJson;
import icequill.files.ShopFolder;
import icequill.files.StoredForms;
import icequill.ledger.IssuedPaper;
import icequill.ledger.Origin;
import icequill.ledger.PaperKind;
import icequill.ledger.Reading;
import icequill.ledger.SiteEntry;
import icequill.ledger.Transaction;
import icequill.ledger.VisitEntry;
import icequill.party.Site;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The office that records visits in the book and issues invoices and quotes from it. */
public final class IssueOffice {

    private final Path folder;
    private final ShopBook book;
    private final IssueDesk desk;

    private IssueOffice(ShopBook book) {
        this.folder = book.folder();
        this.book = book;
        this.desk = IssueDesk.of(book.folder());
    }

    public static IssueOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    static IssueOffice of(ShopBook book) {
        return new IssueOffice(book);
    }

    /**
     * Records a visit, priced first so that nothing is recorded that could not be billed. Recorded again, it takes the place of
     * what was recorded, as long as it was not billed.
     */
    public Checked<RecordedVisit> record(Path file) {
        ShopFolder shop = BookSites.shop(folder);
        return VisitInHand.of(shop, file).then(hand -> book.write(open -> taken(shop, hand.site(), open)
                .then(site -> stored(hand, shop.stored(file).orElseThrow(), open))));
    }

    private static Checked<RecordedVisit> stored(VisitInHand hand, String data, Transaction open) {
        VisitEntry entry = new VisitEntry(hand.visit().id(), hand.site().id(), hand.visit().began(),
                hand.visit().ended(), hand.visit().order().purchaseOrder(), data);
        Optional<VisitEntry> before = EntryRows.find(open.entries().visit(entry.id()));
        boolean same = before.filter(old -> old.data().equals(data)).isPresent();
        Checked<VisitEntry> done = before.isEmpty()
                ? open.register().record(entry)
                : same ? Checked.sound(entry) : open.register().change(entry);
        return done.map(recorded -> RecordedVisit.of(hand));
    }

    /** A site that has a file is taken into the book as the file has it; any other stands there already. */
    private Checked<SiteEntry> taken(ShopFolder shop, Site site, Transaction open) {
        Path file = folder.resolve("sites").resolve(site.id() + ".yaml");
        if (!Files.exists(file)) {
            return open.entries().site(site.id());
        }
        Optional<StoredForms.Whole> whole = shop.siteFile(file, site.id());
        return VisitInHand.report(shop, new Problems()).or(whole::orElseThrow)
                .then(new EntryRows(open)::take);
    }

    /** The visits that are recorded and have no invoice that stands, by their beginning. */
    public Checked<List<String>> unbilled() {
        return book.read(open -> Checked.sound(open.entries().visits().stream().map(VisitEntry::id)
                .filter(id -> Billed.visit(open, id).isEmpty()).toList()));
    }

    /** Issues the invoice of a recorded visit. */
    public Checked<BookedPaper> issue(String visit, IssueWish wish) {
        return book.read(open -> visit(open, visit)).then(entry -> hand(entry).then(hand -> Office
                .assembled(hand, wish.numbered("0"))
                .then(draft -> book.write(open -> issue(open, hand, entry, wish)))));
    }

    private Checked<VisitEntry> visit(Reading open, String id) {
        return EntryRows.find(open.entries().visit(id)).map(Checked::sound)
                .orElseGet(() -> Checked.faulty(unknownVisit(open, id)));
    }

    private Problem unknownVisit(Reading open, String id) {
        Path file = folder.resolve("visits").resolve(id + ".yaml");
        if (Files.exists(file)) {
            return new Problem(Code.UNKNOWN_NAME, Place.NOWHERE, "visit \"" + id + "\" is not recorded yet",
                    "first: icequill visit " + file);
        }
        return Unknown.name("visit", id, open.entries().visits().stream().map(VisitEntry::id).toList(),
                "record it first: icequill visit FILE");
    }

    private Checked<VisitInHand> hand(VisitEntry entry) {
        return VisitInHand.stored(BookSites.shop(folder), entry.id(), entry.data()).then(Office::withinLimit);
    }

    private Checked<BookedPaper> issue(Transaction open, VisitInHand hand, VisitEntry entry, IssueWish wish) {
        Optional<String> billed = Billed.visit(open, entry.id());
        if (billed.isPresent()) {
            return Checked.faulty(new Problem(Code.ALREADY_EXISTS, Place.NOWHERE,
                    "visit \"" + entry.id() + "\" was billed as " + billed.get(),
                    "if that is wrong: icequill credit " + billed.get()));
        }
        return open.entries().site(entry.site())
                .then(site -> desk.issue(open, PaperKind.INVOICE, wish.date(),
                        Origin.ofVisit(site.customer(), site.id(), entry.id()),
                        number -> Office.assembled(hand, wish.numbered(number))))
                .map(paper -> BookedPaper.of(paper, open));
    }

    /** Issues the quote of a planned repair, or of maintenance. */
    public Checked<BookedPaper> quote(Path file, IssueWish wish) {
        ShopFolder shop = BookSites.shop(folder);
        boolean maintenance = shop.isMaintenance(file);
        PaperKind kind = maintenance ? PaperKind.MAINTENANCE_QUOTE : PaperKind.REPAIR_QUOTE;
        return maintenance
                ? PlanInHand.of(shop, file, wish.date()).then(hand -> issue(shop, hand.setting().site(), kind, wish,
                        Optional.empty(), number -> Office.billTo(hand.setting().site(), wish.date())
                                .then(billTo -> hand.quote(wish.numbered(number), billTo))))
                : RepairQuoting.of(folder, shop, file, wish.numbered("0")).then(quoting -> issue(shop,
                        quoting.hand().site(), kind, wish, Optional.empty(),
                        number -> quoting.quote(wish.numbered(number))));
    }

    /**
     * Issues the invoice of one payment of an agreement.
     *
     * @param payment from 1
     */
    public Checked<BookedPaper> payment(Path file, int payment, IssueWish wish) {
        ShopFolder shop = BookSites.shop(folder);
        return AgreementInHand.of(shop, file, wish.date()).then(hand -> {
            Site site = hand.setting().whole();
            return issue(shop, site, PaperKind.INVOICE, wish,
                    Optional.of(new Billed.Payment(hand.request().number(), payment)),
                    number -> Office.billTo(site, wish.date()).then(billTo -> new InstallmentAssembly(hand, billTo)
                            .invoice(payment, wish.numbered(number))));
        });
    }

    /** A paper that no visit is behind. */
    private Checked<BookedPaper> issue(ShopFolder shop, Site site, PaperKind kind, IssueWish wish,
            Optional<Billed.Payment> payment, Function<String, Checked<? extends Paper>> paper) {
        return paper.apply("0").then(draft -> book.write(open -> taken(shop, site, open)
                .then(entry -> payment.map(one -> Billed.unlessBilled(open, one)).orElse(Checked.sound(true))
                        .then(free -> desk.issue(open, kind, wish.date(), new Origin(Optional.of(entry.customer()),
                                Optional.of(entry.id()), Optional.empty(), payment.map(Billed.Payment::agreement),
                                Optional.empty(), Optional.empty()), paper)))
                .map(issued -> BookedPaper.of(issued, open))));
    }

    /** The paper of a number as it was issued. */
    static Checked<Paper> paper(Reading open, IssuedPaper issued) {
        return open.papers().data(issued.number()).then(data -> PaperJson.read(data, issued.number()));
    }
}
