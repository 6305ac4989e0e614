package icequill.office;

import icequill.agreement.NoticePlan;
import icequill.agreement.NoticeRule.Delivery;
import icequill.agreement.NoticeRules;
import icequill.answer.ComparisonResult;
import icequill.answer.PlanEarnings;
import icequill.answer.RenewalAdvice;
import icequill.answer.WrittenPaper;
import icequill.document.InstallmentInvoice;
import icequill.document.Paper;
import icequill.explain.ConstantKey;
import icequill.office.billing.InvoicedPayments;
import icequill.office.letters.LooseMails;
import icequill.office.letters.LoosePaper;
import icequill.office.writing.PaperWriter;
import icequill.outlook.ComparisonAssembly;
import icequill.outlook.LookAhead;
import icequill.outlook.OwnersAssembly;
import icequill.outlook.SiteForecast;
import icequill.papers.AgreementAssembly;
import icequill.papers.InstallmentAssembly;
import icequill.party.Site;
import icequill.plans.PlanContext;
import icequill.plans.RenewalAssembly;
import icequill.plans.WholeAgreement;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.ForecastLoader;
import icequill.shop.FormName;
import icequill.shop.PlanLoader;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The office where plans and agreements are looked after. */
public final class PlanOffice {

    private final ShopBook book;
    private final PaperWriter desk;

    private PlanOffice(ShopBook book) {
        this.book = book;
        this.desk = new PaperWriter(book);
    }

    public static PlanOffice of(ShopBook book) {
        return new PlanOffice(book);
    }

    /** Writes the draft of a maintenance quote into papers/, at the prices of its own date, which it holds. */
    Validated<WrittenPaper> quote(FormName name, PaperOptions options) {
        return new PlanLoader(BookForms.shop(book)).of(name, options.date())
                .then(hand -> hand.setting().site().billTo(options.date())
                        .then(billTo -> hand.quote(options, billTo))
                        .then(quote -> write(quote, "draft-quote-" + name.stem(), hand.setting().site(), options))
                        .map(paper -> paper.with(hand.leftOut())));
    }

    /** What the plans of a maintenance quote cost the shop and earn, for the owner. */
    public Validated<PlanEarnings> earnings(FormName name, PaperOptions options) {
        return new PlanLoader(BookForms.shop(book)).of(name, options.date())
                .map(hand -> new PlanEarnings(hand,
                        options.language().orElse(hand.setting().shop().language())));
    }

    /** Writes an agreement into papers/, in place of an earlier print. */
    public Validated<WrittenPaper> agreement(FormName name, PaperOptions options) {
        return agreementPaper(name, options).then(paper -> new LooseMails(book).write(paper, options.extras()));
    }

    /** The same paper, not written yet. */
    public Validated<LoosePaper> agreementPaper(FormName name, PaperOptions options) {
        ShopFolder shop = BookForms.shop(book);
        return agreementOf(shop, name, options)
                .then(hand -> hand.billTo(options.date())
                        .then(billTo -> new AgreementAssembly(hand, billTo, shop.earning()).agreement(options))
                        .map(paper -> LoosePaper.at(hand.site(), "agreement-" + paper.number(), paper)));
    }

    /**
     * Writes the draft of the invoice of one installment of an agreement into papers/, in place of an earlier one.
     *
     * @param installment from 1
     */
    public Validated<WrittenPaper> installment(FormName name, int installment, PaperOptions options) {
        return agreementOf(BookForms.shop(book), name, options)
                .then(hand -> hand.billTo(options.date())
                        .then(billTo -> new InstallmentAssembly(hand, billTo).invoice(installment, options))
                        .then(invoice -> write(invoice, options)));
    }

    private Validated<WrittenPaper> write(InstallmentInvoice invoice, PaperOptions options) {
        return desk.write(invoice, "draft-" + invoice.agreement() + "-" + invoice.payment(), options.extras())
                .map(files -> WrittenPaper.of(files, invoice, List.of()));
    }

    /**
     * Writes the notice of an agreement's renewal into papers/, in place of an earlier one.
     *
     * @param late why it does not come in time, printed for the customer; empty where it does
     */
    public Validated<RenewalAdvice> renewal(FormName name, PaperOptions options, Optional<String> late) {
        return renewing(name, options).then(assembly -> renewal(assembly, options, late));
    }

    /** The notice of an agreement's renewal as it goes out by mail, not written yet; a problem where a law does not count it then. */
    public Validated<LoosePaper> noticeByMail(FormName name, PaperOptions options, Optional<String> late) {
        return renewing(name, options).then(assembly -> notice(assembly, options, late));
    }

    private Validated<RenewalAssembly> renewing(FormName name, PaperOptions options) {
        ShopFolder shop = BookForms.shop(book);
        return agreementOf(shop, name, options).then(hand -> hand.billTo(options.date())
                .map(billTo -> new RenewalAssembly(hand, billTo, shop.notices(), shop.schedule())));
    }

    private Validated<LoosePaper> notice(RenewalAssembly assembly, PaperOptions options, Optional<String> late) {
        return mailed(assembly.plan(assembly.notices().orElseThrow(), options.date()), options)
                .then(valid -> assembly.notice(options, late)).map(notice -> LoosePaper
                        .at(assembly.hand().site(), "renewal-" + notice.agreement(), notice));
    }

    private Validated<RenewalAdvice> renewal(RenewalAssembly assembly, PaperOptions options, Optional<String> late) {
        NoticeRules rules = assembly.notices().orElseThrow();
        return notice(assembly, options, late).then(paper -> new LooseMails(book).write(paper, options.extras()))
                .map(paper -> new RenewalAdvice(paper, assembly.plan(rules, options.date()), options.date(),
                        assembly.hand().language(options.language()),
                        assembly.hand().first().setting().shop().address().country()));
    }

    /** A notice goes by mail only where every law that concerns it lets it. */
    private static Validated<Boolean> mailed(NoticePlan plan, PaperOptions options) {
        Problems problems = new Problems();
        plan.rules().stream().filter(rule -> options.extras().mail() && !rule.delivery().contains(Delivery.EMAIL))
                .forEach(rule -> problems.add(Code.NOT_ALLOWED, new Place("notices.yaml", 0, ""),
                        "by " + rule.id() + " a notice does not count that comes by e-mail", rule.delivery().stream()
                                .map(way -> ConstantKey.of(way)).collect(Collectors.joining(", "))));
        return problems.or(() -> true);
    }

    /** Writes a comparison of ways of having machines looked after into papers/, in place of an earlier one. */
    public Validated<ComparisonResult> compare(FormName name, PaperOptions options, LookAhead asked) {
        return compared(name, options, asked).then(ahead -> sheet(ahead, name, options));
    }

    /** Writes the owner's page of a comparison into papers/, in place of an earlier one; for her eyes only. */
    public Validated<WrittenPaper> ownersOutlook(FormName name, PaperOptions options, LookAhead asked) {
        return compared(name, options, asked).then(ahead -> ownersPage(ahead, name, options));
    }

    /** Writes both of one forecast, the customer's sheet first. */
    public Validated<List<WrittenPaper>> bothPages(FormName name, PaperOptions options, LookAhead asked) {
        return compared(name, options, asked).then(ahead -> sheet(ahead, name, options)
                .then(sheet -> ownersPage(ahead, name, options).map(page -> List.of(sheet.paper(), page))));
    }

    /** A request, and the forecast of its site; none where there are no rates for one. */
    private record Ahead(PlanContext hand, Optional<SiteForecast> forecast) {}

    private Validated<Ahead> compared(FormName name, PaperOptions options, LookAhead asked) {
        ShopFolder shop = BookForms.shop(book);
        return new PlanLoader(shop).of(name, options.date()).then(PlanContext::comparable)
                .then(hand -> new ForecastLoader(shop).of(hand, options.date(), asked)
                        .map(forecast -> new Ahead(hand, forecast)));
    }

    private Validated<ComparisonResult> sheet(Ahead ahead, FormName name, PaperOptions options) {
        return new ComparisonAssembly(ahead.hand(), ahead.forecast()).sheet(options)
                .then(sheet -> write(sheet, "comparison-" + name.stem(), ahead.hand().setting().site(), options)
                        .map(paper -> new ComparisonResult(paper, sheet, ahead.forecast())));
    }

    private Validated<WrittenPaper> ownersPage(Ahead ahead, FormName name, PaperOptions options) {
        return ahead.forecast().map(Validated::valid)
                .orElseGet(() -> Validated.invalid(ForecastLoader.noRates(options.date())))
                .then(forecast -> write(new OwnersAssembly(forecast).page(options), "owner-comparison-" + name.stem(),
                        ahead.hand().setting().site(), options));
    }

    private Validated<WholeAgreement> agreementOf(ShopFolder shop, FormName name, PaperOptions options) {
        return new AgreementLoader(shop, new InvoicedPayments(book)::of).of(name, options.date());
    }

    private Validated<WrittenPaper> write(Paper paper, String name, Site site, PaperOptions options) {
        return new LooseMails(book).write(LoosePaper.at(site, name, paper), options.extras());
    }
}
