package icequill.answer.shown;

import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.document.RepairQuote;
import icequill.document.StageInvoice;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a paper itself says of what it is for.
 *
 * @param installment of an agreement that it bills
 * @param reason why a credit note gives back
 * @param validUntil the last day of a quote
 * @param work that a repair quote offers, or that a part of is billed
 * @param quote that a part of is billed
 */
public record PaperMatter(Optional<Installment> installment, Optional<String> reason, Optional<LocalDate> validUntil,
        Optional<String> work, Optional<String> quote, Optional<String> purchaseOrder, Optional<Served> served) {

    /**
     * Which of how many.
     *
     * @param number from 1
     */
    public record Installment(int number, int of) {}

    /** From the first to the last day on which was done what it charges. */
    public record Served(LocalDate from, LocalDate until) {
        private String text() {
            return from.equals(until) ? from.toString() : from + " to " + until;
        }
    }

    static PaperMatter of(Paper paper) {
        return new PaperMatter(
                paper instanceof InstallmentInvoice invoice
                        ? Optional.of(new Installment(invoice.payment(), invoice.payments()))
                        : Optional.empty(),
                paper instanceof CreditNote credit ? Optional.of(credit.reason()) : Optional.empty(),
                lastDay(paper), work(paper),
                paper instanceof StageInvoice part ? Optional.of(part.quote().number()) : Optional.empty(),
                paper instanceof PricedPaper priced ? priced.served().purchaseOrder() : Optional.empty(),
                paper instanceof PricedPaper priced
                        ? Optional.of(new Served(priced.served().from(), priced.served().until()))
                        : Optional.empty());
    }

    private static Optional<String> work(Paper paper) {
        return switch (paper) {
        case RepairQuote quote -> Optional.of(quote.work());
        case StageInvoice part -> Optional.of(part.work());
        default -> Optional.empty();
        };
    }

    /** The last day of a quote; empty for any other paper. */
    private static Optional<LocalDate> lastDay(Paper paper) {
        return switch (paper) {
        case RepairQuote quote -> Optional.of(quote.validUntil());
        case MaintenanceQuote quote -> Optional.of(quote.validUntil());
        default -> Optional.empty();
        };
    }

    /** Names and values, for a table of text. */
    List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        installment.ifPresent(one -> rows.add(List.of("installment", one.number() + " of " + one.of())));
        reason.ifPresent(text -> rows.add(List.of("reason", text)));
        validUntil.ifPresent(day -> rows.add(List.of("validUntil", day.toString())));
        work.ifPresent(text -> rows.add(List.of("work", text)));
        quote.ifPresent(number -> rows.add(List.of("quote", number)));
        purchaseOrder.ifPresent(order -> rows.add(List.of("purchaseOrder", order)));
        served.ifPresent(days -> rows.add(List.of("served", days.text())));
        return rows;
    }
}
