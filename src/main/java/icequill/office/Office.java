package icequill.office;

import icequill.answer.BrushingResult;
import icequill.answer.PriceSheet;
import icequill.answer.TimetableSheet;
import icequill.answer.WrittenPaper;
import icequill.document.Invoice;
import icequill.document.Paper;
import icequill.ledger.papers.Pdf;
import icequill.life.repair.RecommendedRepair;
import icequill.office.billing.StageBilling;
import icequill.office.letters.LooseMails;
import icequill.office.letters.LoosePaper;
import icequill.office.writing.PaperWriter;
import icequill.office.writing.RepairQuoting;
import icequill.papers.InvoiceAssembly;
import icequill.papers.NamedSheet;
import icequill.papers.RecordAssembly;
import icequill.papers.WorkSheetAssembly;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.request.TickedTimes;
import icequill.shop.BookForms;
import icequill.shop.BrushingLoader;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.VisitLoader;
import icequill.shop.life.OpenRepairs;
import icequill.visits.DayPlan;
import icequill.visits.TimetableRequest;
import icequill.visits.VisitContext;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The office of one shop folder. Settings and rates are read once, what a call names each time. */
public final class Office {

    private final ShopBook book;
    private final PaperWriter desk;

    private Office(ShopBook book) {
        this.book = book;
        this.desk = new PaperWriter(book);
    }

    /**
     * The office of a shop.
     *
     * @param given files of forms that come before those of the book, and are stored nowhere
     */
    public static Office of(Path folder, List<Path> given) {
        return of(ShopBook.of(folder, Clock.systemUTC()).with(given));
    }

    /** The same with a shop that is open already. */
    public static Office of(ShopBook book) {
        return new Office(book);
    }

    /** How soon dirt stops machines. */
    public FitOffice fits() {
        return FitOffice.of(book);
    }

    /** The office where plans and agreements of the same shop are looked after. */
    public PlanOffice plans() {
        return PlanOffice.of(book);
    }

    /** The office where the accounts of the same shop's customers are looked after. */
    public AccountOffice accounts() {
        return AccountOffice.of(book);
    }

    /** Whether what is to be quoted is maintenance. */
    public boolean isMaintenance(FormName name) {
        return BookForms.shop(book).isMaintenance(name);
    }

    /** The price of a visit. */
    public Validated<PriceSheet> price(FormName name, Optional<Language> language) {
        return new VisitLoader(BookForms.shop(book)).of(name)
                .map(hand -> new PriceSheet(hand, hand.language(language)));
    }

    /**
     * Writes the draft of the invoice of a visit into papers/, in place of an earlier one. A price above the customer's limit is a problem.
     */
    public Validated<WrittenPaper> invoice(FormName name, PaperOptions options) {
        return new VisitLoader(BookForms.shop(book)).of(name).then(hand -> invoice(hand, options));
    }

    /** The same draft to look at; nothing is written. */
    public Validated<Pdf> draftOfInvoice(FormName name, PaperOptions options) {
        return new VisitLoader(BookForms.shop(book)).of(name).then(VisitContext::withinLimit)
                .then(found -> drafted(found, options))
                .then(invoice -> desk.printed(invoice, "", new Extras(false, false, true), Map.of()))
                .map(files -> Pdf.of(files.values().iterator().next()));
    }

    /** The same for a visit that was priced already. */
    Validated<WrittenPaper> invoice(VisitContext hand, PaperOptions options) {
        return hand.withinLimit()
                .then(found -> drafted(found, options).then(invoice -> write(found, invoice, options)));
    }

    /** Less what was asked for before, as far as the book knows the visit. */
    private Validated<Invoice> drafted(VisitContext hand, PaperOptions options) {
        return InvoiceAssembly.of(hand, book.exists()
                ? book.read(open -> Validated.valid(StageBilling.before(open, hand.visit().id()))).found()
                        .orElse(List.of())
                : List.of(), options);
    }

    private Validated<WrittenPaper> write(VisitContext hand, Invoice invoice, PaperOptions options) {
        return desk.write(invoice, "draft-" + hand.visit().id(), options.extras())
                .map(files -> WrittenPaper.of(files, invoice, hand.notices()));
    }

    /**
     * Writes the draft of the quote of a planned repair, or of maintenance, into papers/, at the prices of the quote's own date, which it
     * holds.
     */
    public Validated<WrittenPaper> quote(FormName name, PaperOptions options) {
        ShopFolder shop = BookForms.shop(book);
        if (shop.isMaintenance(name)) {
            return plans().quote(name, options);
        }
        return RepairQuoting.of(book.folder(), shop, name, options)
                .then(quoting -> quoting.quote(options).then(quote -> desk
                        .write(quote, "draft-quote-" + quoting.hand().visit().id(), options.extras())
                        .map(files -> WrittenPaper.of(files, quote,
                                quoting.hand().notices()))));
    }

    /** The price of a planned repair as its quote has it, for the owner. */
    public Validated<PriceSheet> priceOfQuote(FormName name, PaperOptions options) {
        return new VisitLoader(BookForms.shop(book)).of(name, visit -> options.date())
                .map(hand -> new PriceSheet(hand, options.language().orElse(hand.shop().language())));
    }

    /** Writes the record of a visit into papers/, in place of an earlier one. */
    public Validated<WrittenPaper> record(FormName name, PaperOptions options) {
        return new VisitLoader(BookForms.shop(book)).of(name).then(hand -> record(hand, options));
    }

    /** The same for a visit that was read already. */
    public Validated<WrittenPaper> record(VisitContext hand, PaperOptions options) {
        return recordOf(hand, options).then(paper -> new LooseMails(book).write(paper, options.extras()));
    }

    /** The same paper, not written yet. */
    public Validated<LoosePaper> recordOf(FormName name, PaperOptions options) {
        return new VisitLoader(BookForms.shop(book)).of(name).then(hand -> recordOf(hand, options));
    }

    private static Validated<LoosePaper> recordOf(VisitContext hand, PaperOptions options) {
        if (hand.visit().sale().isPresent()) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, hand.visit().place(),
                    "\"" + hand.visit().id() + "\" is a sale, of which there is no record", "a visit"));
        }
        return hand.vouched().map(valid -> LoosePaper.at(valid.site(), "record-" + valid.visit().id(),
                new RecordAssembly(valid, valid.language(options.language())).record(options.date())));
    }

    /**
     * The shortest safe timetable of a planned visit.
     *
     * @param crew how many come; empty for those whom the visit names
     * @param ticked what is done already; the rest is planned anew
     * @param language of the alarms; empty for the shop's
     */
    public Validated<TimetableSheet> plan(FormName name, OptionalInt crew, TickedTimes ticked,
            Optional<Language> language) {
        return new VisitLoader(BookForms.shop(book)).of(name)
                .then(hand -> TimetableRequest.of(hand, crew).from(ticked)
                        .then(planning -> TimetableSheet.of(planning, language.orElse(hand.shop().language()))));
    }

    /**
     * The timetables of two planned visits of a day by the same crew.
     *
     * @param drive minutes from the one site to the other
     */
    public Validated<TimetableSheet> plan(FormName first, FormName next, int drive, OptionalInt crew,
            TickedTimes ticked, Optional<Language> language) {
        VisitLoader loader = new VisitLoader(BookForms.shop(book));
        return loader.of(first).then(hand -> TimetableRequest.of(hand, crew).from(ticked))
                .then(planning -> loader.of(next).then(after -> TimetableSheet.of(
                        new DayPlan(planning, after, crew, drive),
                        language.orElse(planning.hand().shop().language()))));
    }

    /** Writes the work sheet of each day of a planned visit into papers/, in place of earlier ones. */
    public Validated<WrittenPaper> worksheet(FormName name, PaperOptions options) {
        ShopFolder shop = BookForms.shop(book);
        return new VisitLoader(shop).of(name).then(hand -> repairs(shop, Stream.of(hand.site().id()))
                .then(open -> write(new WorkSheetAssembly(hand, options.language().orElse(hand.shop().language()), open)
                        .sheets(options.date()), options)));
    }

    /**
     * Writes the work sheets of two planned visits of a day by the same crew.
     *
     * @param drive minutes from the one site to the other
     */
    public Validated<WrittenPaper> worksheets(FormName first, FormName next, int drive, PaperOptions options) {
        ShopFolder shop = BookForms.shop(book);
        VisitLoader loader = new VisitLoader(shop);
        return loader.of(first).then(hand -> loader.of(next)
                .then(after -> repairs(shop, Stream.of(hand, after).map(VisitContext::site).map(Site::id))
                        .then(open -> write(
                                WorkSheetAssembly.sheets(
                                        new DayPlan(TimetableRequest.of(hand, OptionalInt.empty()), after,
                                                OptionalInt.empty(), drive),
                                        options.language().orElse(hand.shop().language()),
                                        options.date(), open),
                                options))));
    }

    /** What was recommended at sites and is not done, by their ids. */
    private Validated<Map<String, List<RecommendedRepair>>> repairs(ShopFolder shop, Stream<String> sites) {
        return book.exists()
                ? book.read(open -> Validated.valid(sites.distinct().collect(Collectors.toMap(site -> site,
                        site -> new OpenRepairs(shop, open).at(site).stream().map(OpenRepairs.One::repair).toList()))))
                : Validated.valid(Map.of());
    }

    private Validated<WrittenPaper> write(Validated<List<NamedSheet>> sheets, PaperOptions options) {
        return sheets.then(all -> all.stream()
                .map(each -> write(each.sheet(), "worksheet-" + each.visit(), each.sheet().customer(), options))
                .reduce((one, other) -> one.then(first -> other.map(first::and))).orElseThrow());
    }

    /** Writes the brushing sheet of a site into papers/, in place of an earlier one. */
    public Validated<BrushingResult> brushing(FormName name, PaperOptions options) {
        return new BrushingLoader(BookForms.shop(book)).of(name, options.date())
                .then(hand -> hand.sheet(options.date(), options.language()).then(sheet -> write(sheet,
                        "brushing-" + hand.site().id(), sheet.customer(), options)
                        .map(paper -> new BrushingResult(paper, sheet))));
    }

    /** The same in both languages, one on each side of the sheet. */
    public Validated<BrushingResult> brushingPair(FormName name, PaperOptions options) {
        return new BrushingLoader(BookForms.shop(book)).of(name, options.date())
                .then(hand -> hand.pair(options.date(), options.language()).then(pair -> write(pair,
                        "brushing-both-" + hand.site().id(), pair.front().customer(), options)
                        .map(paper -> new BrushingResult(paper, pair.front()))));
    }

    /** A paper without a number of its own. */
    private Validated<WrittenPaper> write(Paper paper, String name, String customer, PaperOptions options) {
        return desk.write(paper, name, options.extras())
                .map(files -> WrittenPaper.of(files, paper, customer, List.of()));
    }
}
