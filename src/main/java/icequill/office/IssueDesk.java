package icequill.office;

import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.files.BookSettings;
import icequill.files.PaperJson;
import icequill.files.RatesVersion;
import icequill.ledger.Facts;
import icequill.ledger.IssuedPaper;
import icequill.ledger.Marks;
import icequill.ledger.Numbered;
import icequill.ledger.Origin;
import icequill.ledger.PaperKind;
import icequill.ledger.Pdf;
import icequill.ledger.Printed;
import icequill.ledger.Series;
import icequill.ledger.Transaction;
import icequill.problem.Checked;
import icequill.problem.Place;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Issues papers: each under the next number of its series, printed within the transaction that stores it. */
record IssueDesk(Path folder, BookSettings settings, PaperDesk desk) {

    static IssueDesk of(Path folder) {
        return new IssueDesk(folder, BookSettings.of(folder), new PaperDesk(folder));
    }

    /**
     * Issues one paper.
     *
     * @param date of the paper, whose year chooses the series
     * @param paper as it is under its number
     */
    Checked<IssuedPaper> issue(Transaction book, PaperKind kind, LocalDate date, Origin origin,
            Function<String, Checked<? extends Paper>> paper) {
        Series series = new Series(kind, settings.office().orElse(""), date.getYear());
        Optional<String> customer = origin.customer().flatMap(id -> book.entries().customer(id).found())
                .map(entry -> entry.customer().name());
        return ShopDay.likely(date, Place.NOWHERE, "the paper's date").then(sound -> RatesVersion.of(folder))
                .then(rates -> book.issue(series, origin, numbered -> paper
                        .apply(numbered.number()).then(desk::finished)
                        .then(ready -> printed(ready, numbered, origin, rates, customer))));
    }

    private Checked<Printed> printed(Paper paper, Numbered numbered, Origin origin, String rates,
            Optional<String> customer) {
        Facts facts = PaperFacts.ofPaper(paper, customer);
        Optional<PricedPaper> priced = paper instanceof PricedPaper found ? Optional.of(found) : Optional.empty();
        return pdf(paper, Marks.of(numbered, origin, rates, facts)).map(pdf -> new Printed(paper.date(),
                priced.flatMap(PaperFacts::due), priced.map(PaperFacts::sums), facts, PaperJson.compact(paper), rates,
                Pdf.of(pdf)));
    }

    /** The paper's file as it is issued: with its data, and what the book says of it. */
    Checked<byte[]> pdf(Paper paper, Map<String, String> marks) {
        return desk.printed(paper, "", Extras.NONE, marks).map(files -> files.values().iterator().next());
    }
}
