package icequill.answer.json;

import icequill.answer.AuditSheet;
import icequill.answer.BrushingResult;
import icequill.answer.ChangeCredit;
import icequill.answer.ComparisonResult;
import icequill.answer.EntrySheet;
import icequill.answer.ExportResult;
import icequill.answer.ExportedForms;
import icequill.answer.FitResult;
import icequill.answer.ForgetResult;
import icequill.answer.Hindsight;
import icequill.answer.ImportResult;
import icequill.answer.MergeResult;
import icequill.answer.NextInstallment;
import icequill.answer.OpenedOffice;
import icequill.answer.PaymentSheet;
import icequill.answer.PlanEarnings;
import icequill.answer.ProblemReport;
import icequill.answer.RecordedVisit;
import icequill.answer.RenewalAdvice;
import icequill.answer.Reprint;
import icequill.answer.ShopFacts;
import icequill.answer.ShopMade;
import icequill.answer.TimetableSheet;
import icequill.answer.TrailSheet;
import icequill.answer.WithdrawnVisit;
import icequill.answer.WrittenForm;
import icequill.answer.WrittenPaper;
import icequill.answer.call.CallListSheet;
import icequill.answer.call.CallSheet;
import icequill.answer.call.TakenCallSheet;
import icequill.answer.days.DueSheet;
import icequill.answer.history.HistorySheet;
import icequill.answer.history.VisitEarnings;
import icequill.answer.history.VisitListSheet;
import icequill.answer.job.JobList;
import icequill.answer.job.JobSheet;
import icequill.answer.job.RecommendedRepairs;
import icequill.answer.paper.DueInstallments;
import icequill.answer.paper.IssuedPapers;
import icequill.answer.paper.PaperCopies;
import icequill.answer.paper.PaperList;
import icequill.answer.paper.Reprints;
import icequill.answer.price.VisitPrice;
import icequill.answer.quote.QuoteList;
import icequill.answer.quote.QuoteOutcomes;
import icequill.answer.quote.QuoteSheet;
import icequill.answer.rates.AdoptedRates;
import icequill.answer.rates.DayPrices;
import icequill.answer.rates.RaisedPrices;
import icequill.answer.rates.RatesExport;
import icequill.answer.rates.RatesList;
import icequill.answer.rates.RatesSheet;
import icequill.answer.rates.Rework;
import icequill.answer.rates.WhatIf;
import icequill.answer.register.AgreementList;
import icequill.answer.register.ContactList;
import icequill.answer.register.CustomerList;
import icequill.answer.register.MachineList;
import icequill.answer.register.PaymentList;
import icequill.answer.register.RenewalList;
import icequill.answer.register.SiteList;
import icequill.answer.shown.QuoteStanding;
import icequill.answer.shown.Shown;
import icequill.answer.shown.WholeBook;
import icequill.answer.site.SiteCardSheet;
import icequill.answer.today.DaySheet;
import icequill.office.demo.Demo;
import java.util.LinkedHashMap;
import java.util.Map;

/** Every answer that commands give as JSON, by the name that its page and its schema have. */
final class Answers {

    private static final Map<String, Class<?>> ALL = all();

    private Answers() {
    }

    static Map<String, Class<?>> byName() {
        return ALL;
    }

    private static Map<String, Class<?>> all() {
        Map<String, Class<?>> all = new LinkedHashMap<>();
        all.put("problems", ProblemReport.class);
        all.put("written-paper", WrittenPaper.class);
        all.put("issued-papers", IssuedPapers.class);
        all.put("due-installments", DueInstallments.class);
        all.put("found-papers", PaperList.class);
        all.put("quotes", QuoteList.class);
        all.put("quote-outcomes", QuoteOutcomes.class);
        all.put("quote-standing", QuoteStanding.class);
        all.put("job", JobSheet.class);
        all.put("jobs", JobList.class);
        all.put("recommended-repairs", RecommendedRepairs.class);
        all.put("next-installment", NextInstallment.class);
        all.put("change-credit", ChangeCredit.class);
        all.put("reprint", Reprint.class);
        all.put("reprints", Reprints.class);
        all.put("paper-copies", PaperCopies.class);
        all.put("rework", Rework.class);
        all.put("shown", Shown.class);
        all.put("entry", EntrySheet.class);
        all.put("customers", CustomerList.class);
        all.put("sites", SiteList.class);
        all.put("machines", MachineList.class);
        all.put("contacts", ContactList.class);
        all.put("renewals", RenewalList.class);
        all.put("due-visits", DueSheet.class);
        all.put("agreements", AgreementList.class);
        all.put("payments", PaymentList.class);
        all.put("payment", PaymentSheet.class);
        all.put("recorded-visit", RecordedVisit.class);
        all.put("written-form", WrittenForm.class);
        all.put("withdrawn-visit", WithdrawnVisit.class);
        all.put("visits", VisitListSheet.class);
        all.put("taken-call", TakenCallSheet.class);
        all.put("call", CallSheet.class);
        all.put("calls", CallListSheet.class);
        all.put("history", HistorySheet.class);
        all.put("site-card", SiteCardSheet.class);
        all.put("today", DaySheet.class);
        all.put("opened-office", OpenedOffice.class);
        all.put("price", VisitPrice.class);
        all.put("quote-figures", QuoteSheet.class);
        all.put("margins", PlanEarnings.class);
        all.put("timetable", TimetableSheet.class);
        all.put("comparison", ComparisonResult.class);
        all.put("fit", FitResult.class);
        all.put("brushing", BrushingResult.class);
        all.put("hindsight", Hindsight.class);
        all.put("renewal", RenewalAdvice.class);
        all.put("audit", AuditSheet.class);
        all.put("trail", TrailSheet.class);
        all.put("merge", MergeResult.class);
        all.put("forgotten-customer", ForgetResult.class);
        all.put("import", ImportResult.class);
        all.put("exported-forms", ExportedForms.class);
        all.put("export", ExportResult.class);
        all.put("book", WholeBook.class);
        all.put("rates-versions", RatesList.class);
        all.put("rates-version", RatesSheet.class);
        all.put("raised-prices", RaisedPrices.class);
        all.put("shop", ShopFacts.class);
        all.put("day-prices", DayPrices.class);
        all.put("what-if", WhatIf.class);
        all.put("earnings", VisitEarnings.class);
        all.put("adopted-rates", AdoptedRates.class);
        all.put("exported-rates", RatesExport.class);
        all.put("made-shop", ShopMade.class);
        all.put("made-demo", Demo.Made.class);
        return all;
    }
}
