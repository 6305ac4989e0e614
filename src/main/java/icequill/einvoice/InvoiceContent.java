package icequill.einvoice;

import icequill.document.Bill;
import icequill.document.CombinedInvoice;
import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.InvoiceLine;
import icequill.document.PricedPaper;
import icequill.document.RepairQuote;
import icequill.document.StageInvoice;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.SalesTaxEncoding;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * What an electronic invoice says, before it is written in one syntax or the other. What is the same on paper is read from the
 * bill.
 *
 * @param number BT-1
 * @param notes BG-1
 * @param terms of payment, BT-20
 */
record InvoiceContent(PricedPaper bill, String number, List<String> notes, String terms, SellerNumbers seller,
        Optional<String> buyerVatId, List<Line> lines, List<Adjustment> adjustments, List<TaxShare> taxes, Sums sums,
        boolean followsEn16931) {

    InvoiceContent {
        notes = List.copyOf(notes);
        lines = List.copyOf(lines);
        adjustments = List.copyOf(adjustments);
        taxes = List.copyOf(taxes);
    }

    /** The content, or what is missing for it. */
    static Validated<InvoiceContent> of(PricedPaper bill, SalesTaxEncoding encoding, Function<Phrase, String> wording) {
        List<InvoiceLine> billed = bill.lines().stream().filter(line -> line.outcome().isDone()).toList();
        TaxScheme taxing = TaxScheme.of(bill, billed, encoding, wording);
        return RequiredFields.of(bill, billed, taxing).or(() -> of(bill, billed, taxing, wording));
    }

    private static InvoiceContent of(PricedPaper bill, List<InvoiceLine> billed, TaxScheme taxing,
            Function<Phrase, String> wording) {
        List<Line> lines = IntStream.range(0, billed.size())
                .mapToObj(i -> Line.of(i + 1, billed.get(i), taxing.categories(billed.get(i)), wording)).toList();
        List<Adjustment> adjustments = Stream
                .concat(discounts(bill, billed, taxing, wording).stream(), taxing.charges().stream()).toList();
        List<TaxShare> taxes = taxing.shares();
        Sums sums = Sums.of(lines, adjustments, taxes, bill.totals().net().getCurrency());
        return new InvoiceContent(bill, bill.number().orElseThrow(), notes(bill, wording), terms(bill, wording),
                SellerNumbers.of(bill, taxing), bill.billTo().vatId().filter(id -> taxing.namesVat()), lines,
                adjustments,
                taxes, sums, taxing.followsEn16931());
    }

    /** A discount on the document, by the tax of the lines that have a share of it: what is between their net and their base. */
    private static List<Adjustment> discounts(PricedPaper bill, List<InvoiceLine> billed, TaxScheme taxing,
            Function<Phrase, String> wording) {
        Map<Optional<Category>, MonetaryAmount> shares = new LinkedHashMap<>();
        billed.forEach(line -> shares.merge(taxing.discounted(line), line.net().subtract(line.tax().base()),
                MonetaryAmount::add));
        String reason = bill.totals().discount().map(off -> wording.apply(off.text())).orElse("");
        return shares.entrySet().stream().filter(share -> !share.getValue().isZero())
                .map(share -> Adjustment.allowance(share.getValue(), Codes.DISCOUNT, reason, share.getKey()))
                .toList();
    }

    private static List<String> notes(PricedPaper bill, Function<Phrase, String> wording) {
        return switch (bill) {
        case Invoice invoice -> invoice.remarks().stream().map(wording).toList();
        case CombinedInvoice invoice -> invoice.remarks().stream().map(wording).toList();
        case StageInvoice invoice -> invoice.remarks().stream().map(wording).toList();
        case InstallmentInvoice invoice -> invoice.remarks().stream().map(wording).toList();
        case CreditNote credit -> {
            List<String> notes = new ArrayList<>(List.of(credit.reason()));
            credit.remarks().forEach(remark -> notes.add(wording.apply(remark)));
            yield notes;
        }
        case RepairQuote quote -> {
            List<String> notes = new ArrayList<>(List.of(quote.work()));
            quote.remarks().forEach(remark -> notes.add(wording.apply(remark)));
            yield notes;
        }
        };
    }

    /** EN 16931 knows a discount for paying early only in these words. */
    private static String terms(PricedPaper bill, Function<Phrase, String> wording) {
        String due = due(bill, wording);
        return bill.totals().early().map(early -> due + " " + wording.apply(early.said())).orElse(due);
    }

    private static String due(PricedPaper bill, Function<Phrase, String> wording) {
        return wording.apply(switch (bill) {
        case Invoice invoice when invoice.totals().gross().isZero() -> Phrase.of("pay.nothing");
        case Invoice invoice -> Phrase.of("pay.terms", new Fact.Day(invoice.due()));
        case CombinedInvoice invoice when invoice.totals().gross().isZero() -> Phrase.of("pay.nothing");
        case CombinedInvoice invoice -> Phrase.of("pay.terms", new Fact.Day(invoice.due()));
        case StageInvoice invoice -> Phrase.of("pay.terms", new Fact.Day(invoice.due()));
        case InstallmentInvoice invoice -> Phrase.of("pay.terms", new Fact.Day(invoice.due()));
        case CreditNote credit -> Phrase.of("credit.settle");
        case RepairQuote quote -> Phrase.of("quote.tax-estimated");
        });
    }

    /** UNTDID 1001. */
    String typeCode() {
        return switch (bill) {
        case Invoice invoice -> Codes.INVOICE;
        case CombinedInvoice invoice -> Codes.INVOICE;
        case InstallmentInvoice invoice -> Codes.INVOICE;
        case StageInvoice invoice -> switch (invoice.stage().kind()) {
        case DEPOSIT -> Codes.PREPAYMENT;
        case PROGRESS -> Codes.PARTIAL;
        case RELEASE, FINAL -> Codes.INVOICE;
        };
        case CreditNote credit -> Codes.CREDIT_NOTE;
        case RepairQuote quote -> throw new IllegalStateException("an offer is no invoice");
        };
    }

    /** The invoice that a credit note corrects, or those whose amounts are taken off (BG-3). */
    List<CreditNote.Original> preceding() {
        return switch (bill) {
        case CreditNote credit -> List.of(credit.original());
        case Invoice invoice -> invoice.advanced().map(Invoice.Advanced::bills).orElse(List.of()).stream()
                .map(before -> new CreditNote.Original(before.number(), before.date())).toList();
        case CombinedInvoice invoice -> List.of();
        case InstallmentInvoice invoice -> List.of();
        case StageInvoice invoice -> List.of();
        case RepairQuote quote -> List.of();
        };
    }

    /** BT-9. */
    Optional<LocalDate> dueDate() {
        return bill instanceof Bill due ? due.dueDate() : Optional.empty();
    }

    /** BT-72; empty where the work billed is not done on the bill's date: what a payment in advance is for, its period says. */
    Optional<LocalDate> delivered() {
        return Optional.of(bill.served().until()).filter(last -> !last.isAfter(bill.date()));
    }

    /** BG-14: where the work took more than a day, or is not done yet. */
    boolean hasPeriod() {
        return !bill.served().from().equals(bill.served().until()) || delivered().isEmpty();
    }

    String currency() {
        return sums.gross().getCurrency().getCurrencyCode();
    }

    /** Whether money is asked for, so that the account belongs on it. */
    boolean asksForPayment() {
        return dueDate().isPresent() && !sums.gross().isZero();
    }
}
