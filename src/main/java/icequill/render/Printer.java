package icequill.render;

import icequill.document.Attachment;
import icequill.document.BrushingSheet;
import icequill.document.BrushingSheetPair;
import icequill.document.CombinedInvoice;
import icequill.document.ComparisonSheet;
import icequill.document.CreditNote;
import icequill.document.FitSheet;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.MaintenanceQuote;
import icequill.document.OwnersOutlook;
import icequill.document.Paper;
import icequill.document.Reminder;
import icequill.document.RenewalNotice;
import icequill.document.RepairQuote;
import icequill.document.ServiceAgreement;
import icequill.document.Statement;
import icequill.document.VisitRecord;
import icequill.document.WorkSheet;
import icequill.problem.Validated;
import icequill.render.limits.PrintRoom;
import icequill.render.pdf.Html;
import icequill.render.pdf.Logo;
import icequill.render.pdf.PdfSetter;
import icequill.render.view.BrushingSheetView;
import icequill.render.view.CombinedInvoiceView;
import icequill.render.view.ComparisonSheetView;
import icequill.render.view.CreditNoteView;
import icequill.render.view.FitSheetView;
import icequill.render.view.InstallmentInvoiceView;
import icequill.render.view.InvoiceView;
import icequill.render.view.MaintenanceQuoteView;
import icequill.render.view.OwnersOutlookView;
import icequill.render.view.ReminderView;
import icequill.render.view.RenewalNoticeView;
import icequill.render.view.RepairQuoteView;
import icequill.render.view.ServiceAgreementView;
import icequill.render.view.StatementView;
import icequill.render.view.VisitRecordView;
import icequill.render.view.WorkSheetView;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Prints papers with the templates of one shop. Safe for use by many threads. */
public final class Printer {

    private final Path shop;
    private final Templates templates;
    private final PrintRoom room;

    private Printer(Path shop, Templates templates, PrintRoom room) {
        this.shop = shop;
        this.templates = templates;
        this.room = room;
    }

    /**
     * A printer for one shop.
     *
     * @param shop the shop folder, whose templates/ may hold templates of its own
     */
    public static Printer of(Path shop) {
        return of(shop, PrintRoom.USUAL);
    }

    /** The same with limits of its own. */
    public static Printer of(Path shop, PrintRoom room) {
        return new Printer(shop, Templates.of(shop.resolve("templates")), room);
    }

    /** The paper as HTML, or what is wrong with the template. */
    public Validated<Html> html(Paper paper) {
        return room.print(() -> filled(paper));
    }

    private Validated<Html> filled(Paper paper) {
        return switch (paper) {
        case Invoice invoice -> fill("invoice.ftlh", paper, InvoiceView.of(invoice));
        case CombinedInvoice invoice -> fill("combined-invoice.ftlh", paper, CombinedInvoiceView.of(invoice));
        case InstallmentInvoice invoice ->
            fill("installment-invoice.ftlh", paper, InstallmentInvoiceView.of(invoice));
        case MaintenanceQuote quote -> fill("maintenance-quote.ftlh", paper, MaintenanceQuoteView.of(quote));
        case ServiceAgreement agreement ->
            fill("service-agreement.ftlh", paper, ServiceAgreementView.of(agreement));
        case RenewalNotice notice -> fill("renewal-notice.ftlh", paper, RenewalNoticeView.of(notice));
        case ComparisonSheet sheet -> fill("comparison-sheet.ftlh", paper, ComparisonSheetView.of(sheet));
        case OwnersOutlook page -> fill("owners-outlook.ftlh", paper, OwnersOutlookView.of(page));
        case FitSheet sheet -> fill("fit-sheet.ftlh", paper, FitSheetView.of(sheet));
        case RepairQuote quote -> fill("repair-quote.ftlh", paper, RepairQuoteView.of(quote));
        case CreditNote credit -> fill("credit-note.ftlh", paper, CreditNoteView.of(credit));
        case VisitRecord visit -> fill("visit-record.ftlh", paper, VisitRecordView.of(visit));
        case WorkSheet sheet -> fill("work-sheet.ftlh", paper, WorkSheetView.of(sheet));
        case BrushingSheet sheet -> fill("brushing-sheet.ftlh", paper, BrushingSheetView.of(sheet));
        case BrushingSheetPair pair -> fill("brushing-pair.ftlh", paper, BrushingSheetView.of(pair));
        case Statement statement -> fill("statement.ftlh", paper, StatementView.of(statement));
        case Reminder reminder -> fill("reminder.ftlh", paper, ReminderView.of(reminder));
        };
    }

    /**
     * The page as PDF, or what is wrong with it.
     *
     * @param attachments files to carry within it; may be empty
     * @param marks what the shop's book says of a paper that it numbered, by name, for its metadata; empty for others
     */
    public Validated<byte[]> pdf(Paper paper, Html html, List<Attachment> attachments, Map<String, String> marks) {
        return room.print(() -> new PdfSetter(shop).set(paper, html, attachments, marks));
    }

    private Validated<Html> fill(String template, Paper paper, Map<String, Object> model) {
        return Logo.of(paper.shop(), shop).then(logo -> templates.fill("paper.css.ftl", model).then(style -> {
            Map<String, Object> whole = new LinkedHashMap<>(model);
            whole.put("logo", logo);
            whole.put("style", style);
            return templates.fill(template, whole).map(Html::new);
        }));
    }
}
