package icequill.render;

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
import icequill.document.RefrigerantRecord;
import icequill.document.Reminder;
import icequill.document.RenewalNotice;
import icequill.document.RepairQuote;
import icequill.document.ServiceAgreement;
import icequill.document.StageInvoice;
import icequill.document.Statement;
import icequill.document.VisitAnnouncement;
import icequill.document.VisitRecord;
import icequill.document.WorkSheet;
import icequill.render.page.Page;
import icequill.render.view.BrushingSheetView;
import icequill.render.view.CombinedInvoiceView;
import icequill.render.view.ComparisonSheetView;
import icequill.render.view.CreditNoteView;
import icequill.render.view.FitSheetView;
import icequill.render.view.InstallmentInvoiceView;
import icequill.render.view.InvoiceView;
import icequill.render.view.MaintenanceQuoteView;
import icequill.render.view.OwnersOutlookView;
import icequill.render.view.RefrigerantRecordView;
import icequill.render.view.ReminderView;
import icequill.render.view.RenewalNoticeView;
import icequill.render.view.RepairQuoteView;
import icequill.render.view.ServiceAgreementView;
import icequill.render.view.StageInvoiceView;
import icequill.render.view.StatementView;
import icequill.render.view.VisitAnnouncementView;
import icequill.render.view.VisitRecordView;
import icequill.render.view.WorkSheetView;

/** What of a paper is set, and by which template. */
record PaperPage(String template, Page page) {

    static PaperPage of(Paper paper) {
        return switch (paper) {
        case Invoice invoice -> new PaperPage("invoice.ftlh", InvoiceView.of(invoice));
        case CombinedInvoice invoice -> new PaperPage("combined-invoice.ftlh", CombinedInvoiceView.of(invoice));
        case InstallmentInvoice invoice ->
            new PaperPage("installment-invoice.ftlh", InstallmentInvoiceView.of(invoice));
        case StageInvoice invoice -> new PaperPage("stage-invoice.ftlh", StageInvoiceView.of(invoice));
        case MaintenanceQuote quote -> new PaperPage("maintenance-quote.ftlh", MaintenanceQuoteView.of(quote));
        case ServiceAgreement agreement ->
            new PaperPage("service-agreement.ftlh", ServiceAgreementView.of(agreement));
        case RenewalNotice notice -> new PaperPage("renewal-notice.ftlh", RenewalNoticeView.of(notice));
        case ComparisonSheet sheet -> new PaperPage("comparison-sheet.ftlh", ComparisonSheetView.of(sheet));
        case OwnersOutlook page -> new PaperPage("owners-outlook.ftlh", OwnersOutlookView.of(page));
        case FitSheet sheet -> new PaperPage("fit-sheet.ftlh", FitSheetView.of(sheet));
        case RepairQuote quote -> new PaperPage("repair-quote.ftlh", RepairQuoteView.of(quote));
        case CreditNote credit -> new PaperPage("credit-note.ftlh", CreditNoteView.of(credit));
        case VisitRecord visit -> new PaperPage("visit-record.ftlh", VisitRecordView.of(visit));
        case VisitAnnouncement visit ->
            new PaperPage("visit-announcement.ftlh", VisitAnnouncementView.of(visit));
        case RefrigerantRecord record ->
            new PaperPage("refrigerant-record.ftlh", RefrigerantRecordView.of(record));
        case WorkSheet sheet -> new PaperPage("work-sheet.ftlh", WorkSheetView.of(sheet));
        case BrushingSheet sheet -> new PaperPage("brushing-sheet.ftlh", BrushingSheetView.of(sheet));
        case BrushingSheetPair pair -> new PaperPage("brushing-pair.ftlh", BrushingSheetView.of(pair));
        case Statement statement -> new PaperPage("statement.ftlh", StatementView.of(statement));
        case Reminder reminder -> new PaperPage("reminder.ftlh", ReminderView.of(reminder));
        };
    }
}
