package icequill.office.writing;

import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.files.paper.PaperJson;
import icequill.ledger.Transaction;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.find.SearchKeys;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Marks;
import icequill.ledger.papers.Numbered;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Pdf;
import icequill.ledger.papers.PrintedPaper;
import icequill.ledger.papers.Printing;
import icequill.ledger.papers.Series;
import icequill.problem.Place;
import icequill.problem.Validated;
import icequill.render.pdf.PrintedFile;
import icequill.request.Extras;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Issues papers: each under the next number of its series, printed within the transaction that stores it. */
public record PaperIssuer(ShopBook shop, PaperWriter desk) {

    public static PaperIssuer of(ShopBook shop) {
        return new PaperIssuer(shop, new PaperWriter(shop));
    }

    /**
     * Issues one paper.
     *
     * @param date of the paper, whose year chooses the series
     * @param paper as it is under its number
     */
    public Validated<IssuedPaper> issue(Transaction book, PaperKind kind, LocalDate date, Origin origin,
            Function<String, Validated<? extends Paper>> paper) {
        Series series = shop.series(kind, date.getYear());
        Optional<CustomerEntry> known = origin.customer().flatMap(id -> book.entries().customer(id).found());
        Optional<String> customer = known.map(entry -> entry.customer().name());
        return ShopDay.likely(date, Place.NOWHERE, "the paper's date").then(valid -> shop.ratesInUse().forPaper(book))
                .then(rates -> book.issue(series, origin, new InBook(this, paper, origin, rates.id(), customer)))
                .map(issued -> {
                    known.ifPresent(entry -> new MailDesk(shop).atOnce(book, issued, entry));
                    return issued;
                });
    }

    /**
     * A paper as the book is to have it.
     *
     * @param customer that the book knows
     */
    private record InBook(PaperIssuer issuer, Function<String, Validated<? extends Paper>> paper, Origin origin,
            String rates, Optional<String> customer) implements Printing {

        @Override
        public Validated<PrintedPaper> under(Numbered numbered) {
            return paper.apply(numbered.number()).then(issuer.desk::finished)
                    .then(ready -> issuer.printed(ready, numbered, origin, rates, customer));
        }

        /** The seal before it stands at one place of the file, so the page need not be set anew. */
        @Override
        public Validated<PrintedPaper> again(PrintedPaper printed, Numbered other, Numbered numbered) {
            return Validated.valid(printed.in(Pdf.of(PrintedFile.remarked(printed.pdf().bytes(), Marks.PREVIOUS,
                    other.previousSeal(), numbered.previousSeal()))));
        }
    }

    private Validated<PrintedPaper> printed(Paper paper, Numbered numbered, Origin origin, String rates,
            Optional<String> customer) {
        SearchKeys facts = PaperFacts.ofPaper(paper, customer);
        Optional<PricedPaper> priced = paper instanceof PricedPaper found ? Optional.of(found) : Optional.empty();
        return pdf(paper, Marks.of(numbered, origin, rates, facts)).map(pdf -> new PrintedPaper(paper.date(),
                priced.flatMap(PaperFacts::due), priced.map(PaperFacts::sums), facts, PaperJson.compact(paper), rates,
                Pdf.of(pdf)));
    }

    /** The paper's file as it is issued: with its data, and what the book says of it. */
    public Validated<byte[]> pdf(Paper paper, Map<String, String> marks) {
        return desk.printed(paper, "", Extras.NONE, marks).map(files -> files.values().iterator().next());
    }
}
