package icequill.answer.shown;

import icequill.answer.BookedPaper;
import icequill.answer.PaidSheet;
import icequill.answer.PaperAmounts;
import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.document.RepairQuote;
import icequill.document.ServicePeriod;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.shop.BookedPapers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that the book knows of a paper.
 *
 * @param details names and values, in order
 * @param credits that give it back, in whole or in part
 * @param amounts every amount of it, by name
 * @param lines empty for a paper without lines of its own, or one whose data cannot be read, which an audit tells
 * @param choices of a maintenance quote
 * @param paid what became of it in money; empty for what asks for none
 */
public record PaperSheet(BookedPaper paper, Map<String, String> details, List<BookedPaper> credits,
        Map<String, Object> amounts, Optional<PricedLines> lines, Optional<QuoteChoices> choices,
        Optional<PaidSheet> paid) {

    public PaperSheet {
        details = new LinkedHashMap<>(details);
        credits = List.copyOf(credits);
        amounts = new LinkedHashMap<>(amounts);
    }

    public static PaperSheet of(Reading open, IssuedPaper issued) {
        Optional<Paper> paper = BookedPapers.paper(open, issued).found();
        Map<String, String> details = new LinkedHashMap<>();
        issued.origin().customer().ifPresent(id -> details.put("customer", id));
        issued.origin().site().ifPresent(id -> details.put("site", id));
        issued.origin().visit().ifPresent(id -> details.put("visit", id));
        issued.origin().further()
                .forEach(at -> details.merge("visit", at.visit(), (one, more) -> one + " " + more));
        issued.origin().agreement().ifPresent(id -> details.put("agreement", id));
        paper.ifPresent(found -> said(found, details));
        open.papers().backdated(issued.number()).ifPresent(reason -> details.put("backdated", reason));
        replacedBy(open, issued).findFirst().ifPresent(number -> details.put("replacedBy", number));
        details.put("issuedAt", issued.issuedAt().toString());
        details.put("ratesVersion", issued.ratesVersion());
        details.put("sha256", issued.pdfHash());
        details.put("seal", issued.seal());
        return new PaperSheet(BookedPaper.of(issued, open), details, open.papers().creditsOf(issued.number()).stream()
                .map(credit -> BookedPaper.of(credit, open)).toList(), paper.map(PaperAmounts::of).orElse(Map.of()),
                paper.flatMap(PricedLines::of), paper.flatMap(QuoteChoices::of),
                PaidSheet.of(open, issued));
    }

    /** What the paper itself says of what it is for. */
    private static void said(Paper paper, Map<String, String> details) {
        switch (paper) {
        case InstallmentInvoice invoice ->
            details.put("payment", invoice.payment() + " of " + invoice.payments());
        case CreditNote credit -> details.put("reason", credit.reason());
        case RepairQuote quote -> {
            details.put("validUntil", quote.validUntil().toString());
            details.put("work", quote.work());
        }
        case MaintenanceQuote quote -> details.put("validUntil", quote.validUntil().toString());
        default -> {
        }
        }
        if (paper instanceof PricedPaper priced) {
            ServicePeriod served = priced.served();
            served.purchaseOrder().ifPresent(order -> details.put("purchaseOrder", order));
            details.put("served", served.from().equals(served.until())
                    ? served.from().toString()
                    : served.from() + " to " + served.until());
        }
    }

    private static Stream<String> replacedBy(Reading open, IssuedPaper paper) {
        return Stream.concat(paper.origin().visit().stream().flatMap(id -> open.papers().ofVisit(id).stream()),
                paper.origin().agreement().stream().flatMap(id -> open.papers().ofAgreement(id).stream()))
                .filter(other -> other.origin().replaces().filter(paper.number()::equals).isPresent())
                .map(IssuedPaper::number);
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        paper.json().forEach((name, value) -> rows.add(List.of(name, String.valueOf(value))));
        details.forEach((name, value) -> rows.add(List.of(name, value)));
        credits.forEach(credit -> rows.add(List.of("givenBackBy", credit.title())));
        paid.ifPresent(money -> rows.addAll(money.rows()));
        return rows;
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>(paper.json());
        view.putAll(details);
        view.put("amounts", amounts);
        paid.ifPresent(money -> view.putAll(money.json()));
        view.put("credits", credits.stream().map(BookedPaper::json).toList());
        return view;
    }
}
