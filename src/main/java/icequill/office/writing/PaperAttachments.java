package icequill.office.writing;

import icequill.document.Attachment;
import icequill.document.Attachment.Relation;
import icequill.document.Bill;
import icequill.document.CombinedInvoice;
import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.Offer;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.document.StageInvoice;
import icequill.einvoice.EInvoice;
import icequill.files.paper.PaperJson;
import icequill.ledger.papers.PaperReader;
import icequill.party.SalesTaxEncoding;
import icequill.party.Shop;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.tax.TaxPlace;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** The data that a paper carries within it, for the customer's books. */
final class PaperAttachments {

    private static final String XML = "text/xml";
    /** Electronic invoices have amounts of no more (EN 16931, BR-DEC). */
    private static final int MOST_DECIMALS = 2;

    private PaperAttachments() {
    }

    /** A bill carries an electronic invoice, an offer a quotation, any other paper and a draft its own data. */
    static Validated<List<Attachment>> of(Paper paper) {
        Sentences sentences = Sentences.of(paper.language(), paper.shop().address().country());
        if (paper instanceof PricedPaper priced && isElectronic(priced)) {
            return priced instanceof Bill bill && followsEn16931(bill)
                    ? EInvoice.cii(bill, sentences::say)
                            .map(xml -> List.of(attachment(Attachment.HYBRID, sentences.word("attachment.cii"), xml)))
                    : ubl(priced).map(xml -> List.of(attachment(name(priced), sentences.word("attachment.ubl"), xml)));
        }
        return Validated.valid(List.of(data(sentences, PaperJson.write(paper))));
    }

    /** The same of a paper of the book, and its data as the book keeps it. */
    static Validated<List<Attachment>> withData(Paper paper) {
        Sentences sentences = Sentences.of(paper.language(), paper.shop().address().country());
        return of(paper).map(all -> Stream.concat(all.stream().filter(one -> !one.name().equals(PaperReader.DATA)),
                Stream.of(data(sentences, PaperJson.compact(paper)))).toList());
    }

    private static Attachment data(Sentences sentences, String json) {
        return new Attachment(PaperReader.DATA, "application/json", sentences.word("attachment.json"), Relation.DATA,
                json);
    }

    /** The paper in UBL; a bill the way the shop writes it. */
    static Validated<byte[]> ubl(PricedPaper paper) {
        Sentences sentences = Sentences.of(paper.language(), paper.shop().address().country());
        return switch (paper) {
        case Bill bill -> EInvoice.ubl(bill, bill.shop().salesTaxEncoding(), sentences::say);
        case Offer offer -> EInvoice.quotation(offer, sentences::say);
        };
    }

    private static String name(PricedPaper paper) {
        return switch (paper) {
        case Invoice invoice -> "invoice.xml";
        case CombinedInvoice invoice -> "invoice.xml";
        case InstallmentInvoice invoice -> "invoice.xml";
        case StageInvoice invoice -> "invoice.xml";
        case CreditNote credit -> "credit-note.xml";
        case Offer offer -> "quotation.xml";
        };
    }

    /** A draft is no invoice yet, and neither is one that bills nothing; three decimals fit in no electronic invoice. */
    private static boolean isElectronic(PricedPaper paper) {
        return !paper.isDraft() && paper.lines().stream().anyMatch(line -> line.outcome().isDone())
                && paper.totals().gross().getCurrency().getDefaultFractionDigits() <= MOST_DECIMALS;
    }

    private static boolean followsEn16931(Bill bill) {
        Shop shop = bill.shop();
        return bill.totals().taxPlace().regime() == TaxPlace.Regime.VAT
                || shop.salesTaxEncoding() == SalesTaxEncoding.EN16931;
    }

    private static Attachment attachment(String name, String description, byte[] xml) {
        return new Attachment(name, XML, description, Relation.ALTERNATIVE, new String(xml, StandardCharsets.UTF_8));
    }
}
