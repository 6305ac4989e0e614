package icequill.office.quoting;

import icequill.answer.BookedPaper;
import icequill.answer.quote.QuoteEntry;
import icequill.answer.quote.QuoteList;
import icequill.answer.quote.QuoteOutcomes;
import icequill.answer.quote.QuoteSheet;
import icequill.answer.shown.QuoteStanding;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Pdf;
import icequill.office.billing.IssueOffice;
import icequill.office.billing.IssueOptions;
import icequill.office.care.AskedPeriod;
import icequill.office.care.PaperOffice;
import icequill.office.care.PaperWish;
import icequill.office.register.ImportOffice;
import icequill.office.writing.PaperWriter;
import icequill.outlook.ComparisonAssembly;
import icequill.outlook.LookAhead;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.plans.PlanContext;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.BookForms;
import icequill.shop.BookedPapers;
import icequill.shop.BrushingLoader;
import icequill.shop.EntryId;
import icequill.shop.ForecastLoader;
import icequill.shop.FormName;
import icequill.shop.PlanLoader;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import icequill.shop.life.QuoteLife;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The office that quotes maintenance while the customer waits: worked out, previewed, and issued with all that was typed. */
public final class QuoteOffice {

    private static final int MOST = 100_000;

    private final ShopBook book;

    private QuoteOffice(ShopBook book) {
        this.book = book;
    }

    public static QuoteOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static QuoteOffice of(ShopBook book) {
        return new QuoteOffice(book);
    }

    /**
     * What can be chosen.
     *
     * @param site by id; empty for a customer whom the book does not have yet
     */
    public Validated<QuoteEntry> choices(Optional<String> site, LocalDate day, Language language) {
        return new QuoteChoosing(book, day, language).choices(site);
    }

    /** What a request that stands somewhere comes to. */
    public Validated<QuoteSheet> figures(FormName request, PaperOptions options, Telling telling) {
        return sheet(BookForms.shop(book), request, options, telling);
    }

    /** The same of one that was typed. */
    public Validated<QuoteSheet> figures(TypedQuote typed, PaperOptions options, Telling telling) {
        return laid(typed).then(shop -> sheet(shop, typed.request(TypedQuote.REQUEST), options, telling));
    }

    private static Validated<QuoteSheet> sheet(ShopFolder shop, FormName request, PaperOptions options,
            Telling telling) {
        return new PlanLoader(shop).of(request, options.date()).then(hand -> hand.setting().site()
                .billTo(options.date()).then(billTo -> hand.quote(options, billTo))
                .then(quote -> telling.isAhead() && hand.comparable().problems().isEmpty()
                        ? ahead(shop, hand, quote, options, telling)
                        : Validated.valid(pricesOnly(hand, quote, telling))));
    }

    private static QuoteSheet pricesOnly(PlanContext hand, MaintenanceQuote quote, Telling telling) {
        return new QuoteSheet(hand, quote, Optional.empty(), Optional.empty(),
                Stream.concat(hand.leftOut().stream(), hand.comparable().problems().stream()).toList(),
                telling.isForOwner());
    }

    private static Validated<QuoteSheet> ahead(ShopFolder shop, PlanContext hand, MaintenanceQuote quote,
            PaperOptions options, Telling telling) {
        return new ForecastLoader(shop).of(hand, options.date(), LookAhead.USUAL)
                .then(forecast -> new ComparisonAssembly(hand, forecast).sheet(options)
                        .map(sheet -> new QuoteSheet(hand, quote, Optional.of(sheet), forecast, hand.leftOut(),
                                telling.isForOwner())));
    }

    /** The shop with a new site laid over its book, which must not have one of its name. */
    private Validated<ShopFolder> laid(TypedQuote typed) {
        ShopFolder shop = BookForms.shop(book);
        Problems problems = new Problems();
        List<Form> sites = typed.sites(problems);
        sites.forEach(site -> taken(site).forEach(problems::add));
        return problems.or(() -> shop.with(sites));
    }

    private List<Problem> taken(Form site) {
        return book.exists()
                ? book.read(open -> Validated.valid(NewCustomer.taken(site, open))).found().orElse(List.of())
                : List.of();
    }

    /** A paper of a quote that was typed, to look at: nothing of it is stored. */
    public Validated<Pdf> preview(TypedQuote typed, QuotedPaper which, PaperOptions options) {
        return laid(typed).then(shop -> paper(shop, which, typed.request(TypedQuote.REQUEST),
                typed.brushing(TypedQuote.BRUSHING), options));
    }

    /**
     * A sheet that goes with a quote that was issued, by the prices of its day.
     *
     * @param number of the quote, that was issued by {@link #issue}
     */
    public Validated<Pdf> sheet(String number, QuotedPaper which) {
        FormName request = new FormName.InBook(request(number));
        return book.read(open -> open.papers().show(number)).then(issued -> paper(BookForms.shop(book), which,
                request, Optional.of(request),
                new PaperOptions(Optional.empty(), issued.date(), Optional.empty(), Extras.NONE)));
    }

    private Validated<Pdf> paper(ShopFolder shop, QuotedPaper which, FormName request, Optional<FormName> brushing,
            PaperOptions options) {
        return (switch (which) {
        case QUOTE -> sheet(shop, request, options, Telling.PRICES).<Paper>map(QuoteSheet::quote);
        case COMPARISON -> sheet(shop, request, options, Telling.ALL)
                .then(sheet -> sheet.comparison().<Validated<Paper>>map(Validated::valid)
                        .orElseGet(() -> new Validated.Invalid<>(sheet.notices())));
        case BRUSHING -> brushing.map(Validated::valid).orElseGet(QuoteOffice::noBrushing)
                .then(name -> new BrushingLoader(shop).of(name, options.date())
                        .then(hand -> hand.sheet(options.date(), options.language())).<Paper>map(sheet -> sheet));
        }).then(this::printed);
    }

    private static Validated<FormName> noBrushing() {
        return Validated.invalid(new Problem(Code.MISSING, new Place(TypedQuote.BRUSHING, 0, "minutes"),
                "nothing is said of the customer's own brushing", "his minutes, his wage and the price of a brush"));
    }

    private Validated<Pdf> printed(Paper paper) {
        return new PaperWriter(book).printed(paper, "", new Extras(false, false, true), Map.of())
                .map(files -> Pdf.of(files.values().iterator().next()));
    }

    /** Whether the book has what a sheet of an issued quote is made from. */
    public boolean hasSheet(String number, QuotedPaper which) {
        String kind = (which == QuotedPaper.BRUSHING ? FormKind.BRUSHING_REQUEST : FormKind.MAINTENANCE_REQUEST)
                .key();
        return book.read(open -> Validated.valid(open.entries().request(kind, request(number))
                .filter(entry -> !entry.isForgotten()).isPresent())).found().orElse(false);
    }

    /**
     * A quote as it was issued, in the language of whoever reads it now.
     *
     * @return that it is none of maintenance, or cannot be read
     */
    public Validated<MaintenanceQuote> maintenance(String number, Language language) {
        return book.read(open -> open.papers().show(number).then(issued -> BookedPapers.paper(open, issued)))
                .then(paper -> paper instanceof MaintenanceQuote quote
                        ? Validated.valid(quote.in(language))
                        : Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                                number + " offers no maintenance", "a maintenance quote")));
    }

    /** What the book calls the request of a quote that was typed. */
    public static String request(String number) {
        return EntryId.of(number);
    }

    /**
     * Issues a quote, and stores what it was made from: the new customer and site, and the requests under the number of the quote in small
     * letters.
     */
    public Validated<BookedPaper> issue(TypedQuote typed, IssueOptions wish) {
        Problems problems = new Problems();
        List<Form> sites = typed.sites(problems);
        return laid(typed).then(shop -> sites.isEmpty() ? problems.or(() -> true) : stored(sites))
                .then(done -> IssueOffice.of(book).quote(typed.request(TypedQuote.REQUEST), wish))
                .then(issued -> stored(typed.requests(request(issued.number()), problems)).map(done -> issued));
    }

    private Validated<Boolean> stored(List<Form> forms) {
        return ImportOffice.of(book).take(forms).map(done -> true);
    }

    /**
     * Quotes that were issued, the newest first.
     *
     * @param day on which it is seen whether they lapsed
     */
    public Validated<QuoteList> issued(PaperWish wish, LocalDate day) {
        return PaperOffice.of(book).find(wish).then(papers -> book.read(open -> {
            Map<String, QuoteLife.Answer> answers = QuoteLife.answers(open);
            return Validated.valid(new QuoteList(papers.stream().map(paper -> QuoteList.Row.of(paper,
                    QuoteStanding.State.of(Optional.ofNullable(answers.get(paper.number()))), lastDay(open, paper),
                    day)).toList()));
        }));
    }

    /**
     * Quotes that were issued in a period, won and lost.
     *
     * @param day on which it is seen whether they lapsed
     */
    public Validated<QuoteOutcomes> outcomes(AskedPeriod period, LocalDate day) {
        PaperWish wish = new PaperWish("", period, List.of("quote"), Optional.empty(), Optional.empty(),
                Optional.empty(), MOST);
        return PaperOffice.of(book).find(wish).then(papers -> book.read(open -> {
            List<QuoteOutcomes.Row> rows = papers.stream()
                    .flatMap(paper -> open.papers().show(paper.number()).then(issued -> QuoteLife.of(open, issued))
                            .found().stream())
                    .map(life -> QuoteResult.of(life, day)).sorted(Comparator.comparing(QuoteOutcomes.Row::date)
                            .thenComparing(QuoteOutcomes.Row::number))
                    .toList();
            return Validated.valid(rows);
        })).then(rows -> BookForms.shop(book).shop().map(Shop::currency)
                .<Validated<QuoteOutcomes>>map(currency -> Validated.valid(QuoteOutcomes.of(rows, currency)))
                .orElseGet(() -> new Validated.Invalid<>(BookForms.shop(book).problems())));
    }

    private static Optional<LocalDate> lastDay(Reading open, BookedPaper paper) {
        Optional<IssuedPaper> issued = open.papers().show(paper.number()).found();
        return issued.flatMap(found -> BookedPapers.lastDay(open, found));
    }
}
