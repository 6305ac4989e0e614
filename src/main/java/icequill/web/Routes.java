package icequill.web;

import icequill.office.quoting.QuotedPaper;
import icequill.web.agreement.AgreementChange;
import icequill.web.agreement.AgreementEnd;
import icequill.web.agreement.AgreementOrder;
import icequill.web.agreement.AgreementOwner;
import icequill.web.agreement.AgreementPage;
import icequill.web.agreement.AgreementRefusal;
import icequill.web.agreement.AgreementsPage;
import icequill.web.agreement.RenewalPage;
import icequill.web.call.CallChangePage;
import icequill.web.call.CallEntryPage;
import icequill.web.call.CallPage;
import icequill.web.call.CallStep;
import icequill.web.call.CallsPage;
import icequill.web.claim.ClaimPage;
import icequill.web.claim.ClaimsPage;
import icequill.web.days.AnnouncementsPage;
import icequill.web.days.CalendarPage;
import icequill.web.days.DaysPage;
import icequill.web.days.DueVisitsPage;
import icequill.web.door.Door;
import icequill.web.mail.LooseMailPage;
import icequill.web.mail.MailPage;
import icequill.web.mail.MailWritingPage;
import icequill.web.mail.PaperMailPage;
import icequill.web.mail.RecipientsPage;
import icequill.web.offer.JobPage;
import icequill.web.offer.JobStageForm;
import icequill.web.offer.JobsPage;
import icequill.web.offer.OutcomesPage;
import icequill.web.offer.QuoteAcceptance;
import icequill.web.offer.QuoteDraft;
import icequill.web.offer.QuoteEntryPage;
import icequill.web.offer.QuotePage;
import icequill.web.offer.QuoteRefusal;
import icequill.web.offer.QuotesPage;
import icequill.web.offer.RecommendedPage;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.PageHandler;
import icequill.web.rates.AdoptPage;
import icequill.web.rates.PricesPage;
import icequill.web.rates.RaisePage;
import icequill.web.rates.TryPage;
import icequill.web.rates.VersionsPage;
import icequill.web.refrigerant.RefrigerantPage;
import icequill.web.run.AuditPage;
import icequill.web.run.DuePage;
import icequill.web.run.ImportPage;
import icequill.web.run.IssueAllPage;
import icequill.web.run.MailsPage;
import icequill.web.run.ReturnedPage;
import icequill.web.run.RunPage;
import icequill.web.run.Runs;
import icequill.web.visit.RepairEntry;
import icequill.web.visit.TimetablePage;
import icequill.web.visit.VisitApproval;
import icequill.web.visit.VisitDraft;
import icequill.web.visit.VisitEntry;
import icequill.web.visit.VisitIssue;
import icequill.web.visit.VisitPage;
import icequill.web.visit.VisitQuote;
import icequill.web.visit.VisitWithdrawal;
import icequill.web.visit.VisitsPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpStatus;
import java.util.List;

/**
 * Which page answers at which address.
 *
 * @param door where a language is chosen
 * @param runs long work
 */
record Routes(RoutesConfig routes, PageHandler handler, Door door, Runs runs) {

    void add() {
        routes.get("/", context -> context.redirect("/today", HttpStatus.SEE_OTHER));
        get("/today", new TodayPage());
        get("/sites", new SitesPage());
        get("/sites/{site}", new SitePage());
        visits();
        form("/visits/{visit}/withdraw", new VisitWithdrawal());
        get("/earnings", new EarningsPage());
        get("/minutes", new MinutesPage());
        FitPage fit = new FitPage();
        get("/fit", fit);
        routes.post("/fit/table", context -> handler.ask(context, fit));
        back("/fit", "/table");
        get("/visits", new VisitsPage());
        form("/today/issue", new IssueAllPage(runs));
        get("/today/renewals", new RenewalsPage());
        get("/today/visits", new DueVisitsPage());
        get("/today/calendar/{person}", new CalendarPage());
        get("/today/calendar/{person}/ics", CalendarPage::file);
        form("/today/days", new DaysPage());
        form("/today/announcements", new AnnouncementsPage());
        form("/today/due", new DuePage(runs));
        get("/visits/{visit}", new VisitPage());
        get("/visits/{visit}/timetable", new TimetablePage());
        post("/visits/{visit}/issue", new VisitIssue());
        post("/visits/{visit}/approve", new VisitApproval());
        back("/visits/{visit}", "/issue", "/approve");
        calls();
        quotes();
        agreements();
        form("/mail", new MailsPage(runs));
        form("/mail/write", new MailWritingPage());
        form("/mail/returned", new ReturnedPage(runs));
        form("/mail/{mail}", new MailPage());
        form("/papers/{number}/mail", new PaperMailPage());
        form("/customers/{customer}/mail", new RecipientsPage());
        loose("/customers/{customer}/statement", LooseMailPage.STATEMENT);
        loose("/customers/{customer}/reminder", LooseMailPage.REMINDER);
        loose("/agreements/{number}/notice", LooseMailPage.NOTICE);
        loose("/agreements/{number}/paper", LooseMailPage.AGREEMENT);
        loose("/visits/{visit}/record", LooseMailPage.RECORD);
        loose("/visits/{visit}/announcement", LooseMailPage.ANNOUNCEMENT);
        get("/papers", new PapersPage());
        get("/papers/{number}", new PaperPage());
        get("/papers/{number}/pdf", PaperFilePage.ISSUED);
        get("/papers/{number}/bare", PaperFilePage.BARE);
        get("/papers/{number}/xml", PaperFilePage.UBL);
        post("/papers/{number}/reprint", new ReprintForm());
        correction("/papers/{number}/credit", CorrectionPage.credit());
        correction("/papers/{number}/reissue", CorrectionPage.reissue());
        get("/rates", new PricesPage());
        get("/rates/versions", new VersionsPage());
        get("/rates/try", new TryPage());
        form("/rates/adopt", new AdoptPage());
        form("/rates/raise", new RaisePage());
        get("/shop", new ShopPage());
        form("/shop/change", new SettingsForm());
        form("/shop/audit", new AuditPage(runs));
        ImportPage forms = new ImportPage(runs);
        form("/shop/import", forms);
        post("/shop/import/{run}", forms.taking());
        RunPage run = new RunPage(runs);
        get("/runs/{run}", run);
        routes.post("/runs/{run}", context -> handler.repeat(context, run.stopping()));
        routes.post("/language", context -> handler.choose(context, door));
    }

    private void calls() {
        get("/calls", new CallsPage());
        form("/calls/new", new CallEntryPage());
        get("/calls/{call}", new CallPage());
        form("/calls/{call}/change", new CallChangePage());
        post("/calls/{call}/plan", CallStep.PLAN);
        post("/calls/{call}/approve", CallStep.APPROVE);
        post("/calls/{call}/close", CallStep.CLOSE);
        post("/calls/{call}/withdraw", CallStep.WITHDRAW);
        back("/calls/{call}", "/plan", "/approve", "/close", "/withdraw");
    }

    private void quotes() {
        QuoteEntryPage entry = new QuoteEntryPage();
        QuoteDraft draft = new QuoteDraft(entry);
        for (String path : List.of("/sites/{site}/quote", "/quotes/new")) {
            form(path, entry);
            routes.post(path + "/figures", context -> handler.ask(context, entry));
            routes.post(path + "/paper", context -> handler.ask(context, entry::paper));
            routes.post(path + "/draft", context -> handler.repeat(context, draft));
            back(path, "/figures", "/paper", "/draft");
        }
        post("/quotes/drafts/{draft}/discard", draft);
        get("/quotes", new QuotesPage());
        get("/quotes/outcomes", new OutcomesPage());
        get("/quotes/{number}", new QuotePage());
        form("/quotes/{number}/accept", new QuoteAcceptance());
        form("/quotes/{number}/decline", new QuoteRefusal());
        get("/refrigerant", RefrigerantPage.OF_SHOP);
        get("/sites/{site}/refrigerant", RefrigerantPage.OF_SITE);
        get("/sites/{site}/refrigerant/pdf", RefrigerantPage::file);
        form("/claims", new ClaimsPage());
        form("/claims/{claim}", new ClaimPage());
        get("/jobs", new JobsPage());
        get("/jobs/recommended", new RecommendedPage());
        form("/jobs/{number}", new JobPage());
        post("/jobs/{number}/stage", new JobStageForm());
        get("/quotes/{number}/comparison", asked -> QuotePage.sheet(asked, QuotedPaper.COMPARISON));
        get("/quotes/{number}/brushing", asked -> QuotePage.sheet(asked, QuotedPaper.BRUSHING));
    }

    private void agreements() {
        get("/agreements", new AgreementsPage());
        get("/agreements/{number}", new AgreementPage());
        form("/agreements/{number}/change", new AgreementChange());
        form("/agreements/{number}/end", new AgreementEnd());
        form("/agreements/{number}/order", new AgreementOrder());
        form("/agreements/{number}/refuse", new AgreementRefusal());
        form("/agreements/{number}/renewal", new RenewalPage());
        form("/agreements/{number}/transfer", new AgreementOwner());
    }

    private void visits() {
        VisitEntry entry = new VisitEntry();
        VisitDraft draft = new VisitDraft(entry);
        for (String path : List.of("/sites/{site}/visit", "/visits/{visit}/change")) {
            form(path, entry);
            routes.post(path + "/price", context -> handler.ask(context, entry));
            routes.post(path + "/paper", context -> handler.ask(context, entry::paper));
            routes.post(path + "/draft", context -> handler.repeat(context, draft));
            back(path, "/price", "/paper", "/draft");
        }
        post("/drafts/{draft}/discard", draft);
        post("/visits/{visit}/quote", new VisitQuote());
        back("/visits/{visit}", "/quote");
        RepairEntry repair = new RepairEntry();
        form("/sites/{site}/repair", repair);
        routes.post("/sites/{site}/repair/price", context -> handler.ask(context, repair));
        back("/sites/{site}/repair", "/price");
    }

    private void correction(String path, CorrectionPage page) {
        form(path, page);
        routes.post(path + "/look", context -> handler.ask(context, page));
        back(path, "/look");
    }

    /** A language that is chosen on what these show, which nobody can look at by their addresses, leads back to the page. */
    private void back(String path, String... asked) {
        for (String end : asked) {
            routes.get(path + end, context -> context.redirect(
                    context.path().substring(0, context.path().length() - end.length()), HttpStatus.SEE_OTHER));
        }
    }

    /** A page with the form that it sends to its own address. */
    private <P extends Page & FormPage> void form(String path, P page) {
        get(path, page);
        post(path, page);
    }

    /** A paper that bears no number, to look at, and by mail. */
    private void loose(String path, LooseMailPage page) {
        get(path, page::file);
        form(path + "/mail", page);
    }

    private void get(String path, Page page) {
        routes.get(path, context -> handler.get(context, page));
    }

    private void post(String path, FormPage page) {
        routes.post(path, context -> handler.post(context, page));
    }
}
