package icequill.office.care;

import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.einvoice.StatedBill;
import icequill.files.paper.PaperJson;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.Pdf;
import icequill.office.writing.PaperFacts;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.pdf.PrintedFile;
import java.util.List;
import java.util.Optional;

/** Reads the papers that the office issues, for the book. */
final class IssuedPaperReader implements PaperReader {

    private static final String XML = ".xml";

    @Override
    public Validated<Read> read(String json) {
        return PaperJson.read(json, "book").then(paper -> switch (paper) {
        case PricedPaper priced ->
            Validated.valid(new Read(PaperFacts.kind(priced), priced.number(), priced.date(), PaperFacts.due(priced),
                    Optional.of(PaperFacts.sums(priced)), PaperFacts.taxes(priced),
                    PaperFacts.of(priced, Optional.empty())));
        case MaintenanceQuote quote ->
            Validated.valid(new Read(PaperKind.MAINTENANCE_QUOTE, quote.number(), quote.date(), Optional.empty(),
                    Optional.empty(), List.of(), PaperFacts.of(quote, Optional.empty())));
        case Paper other -> Validated.invalid(new Problem(Code.BOOK_DAMAGED, Place.NOWHERE,
                "a kind of paper that is not issued", "invoices, credit notes and quotes"));
        });
    }

    @Override
    public Validated<Carried> carried(Pdf pdf) {
        return PrintedFile.read(pdf.bytes()).then(file -> {
            Problems problems = new Problems();
            List<Stated> bills = file.files().entrySet().stream().filter(each -> each.getKey().endsWith(XML))
                    .flatMap(each -> problems.take(StatedBill.read(each.getValue())).map(bill -> new Stated(
                            each.getKey(), bill.date(), bill.total(), bill.payable())).stream())
                    .toList();
            return problems.or(() -> new Carried(file.marks(), file.files(), bills));
        });
    }

    @Override
    public boolean prints(Pdf pdf, String text) {
        return PrintedFile.prints(pdf.bytes(), text);
    }
}
