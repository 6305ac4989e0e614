package icequill.render;

import icequill.RatesFixture;
import icequill.agreement.Acceptance;
import icequill.agreement.Billing;
import icequill.agreement.CleaningInterval;
import icequill.agreement.Earning;
import icequill.agreement.GoingOn;
import icequill.agreement.IncludedCalls;
import icequill.agreement.Installment;
import icequill.agreement.Installments;
import icequill.agreement.PaymentChange;
import icequill.agreement.Prepaid;
import icequill.agreement.Proration;
import icequill.agreement.Raise;
import icequill.agreement.Refund;
import icequill.agreement.RenewalPrice;
import icequill.agreement.RenewalTerms;
import icequill.agreement.Scope;
import icequill.agreement.Slot;
import icequill.agreement.Term;
import icequill.agreement.Tier;
import icequill.agreement.VisitCalendar;
import icequill.document.CallCharge;
import icequill.document.CareOptionKind;
import icequill.document.CareOptionScope;
import icequill.document.CatchUpPrice;
import icequill.document.ComparisonSheet;
import icequill.document.FitSheet;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.MaintenanceQuote;
import icequill.document.MaintenanceQuote.PastCalls;
import icequill.document.Outlook;
import icequill.document.OwnersOutlook;
import icequill.document.PlanChoice;
import icequill.document.PlanYear;
import icequill.document.PlanYear.MinutesFrom;
import icequill.document.RenewalNotice;
import icequill.document.ServiceAgreement;
import icequill.document.ServiceAgreement.RefundClause;
import icequill.document.Where;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.forecast.ChanceInTen;
import icequill.forecast.ChancesPerTenSites;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.planner.Timetable;
import icequill.problem.Place;
import icequill.work.Band;
import icequill.work.MachineState;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.money.MonetaryAmount;

/** Papers about plans for tests of looks, with amounts written down, not priced; the parties are those of an invoice. */
public record PlanFixture(Invoice like, int lines) {

    private static final Term TERM = new Term(LocalDate.of(2026, 1, 31), 24);
    private static final RenewalTerms RENEWAL = new RenewalTerms(TERM, 60, 12, GoingOn.BY_TERM);

    MaintenanceQuote quote() {
        MonetaryAmount price = amount("684");
        PlanChoice none = new PlanChoice(PlanChoice.Kind.PAY_PER_CALL, Optional.empty(), 0, 0, Optional.empty(),
                amount("0"), plain("0"), amount("0"), List.of(), List.of(Phrase.of("choice.pay-per-call")));
        PlanChoice singly = new PlanChoice(PlanChoice.Kind.BOOKED_SINGLY, Optional.of(tier().name()), 2, 1,
                Optional.of(12), amount("760"), plain("760"), amount("60"), List.of(),
                List.of(Phrase.of("choice.booked-singly", new Wording("half <yearly>", "cada medio año").named())));
        PlanChoice plan = new PlanChoice(PlanChoice.Kind.AGREEMENT, Optional.of(tier().name()), 2, 1,
                Optional.of(12), price, how(), amount("55"), Installments.of(new Term(TERM.start(), 12), price,
                        Billing.MONTHLY, Set.of()),
                tier().callTerms());
        return new MaintenanceQuote(like.number().map(of -> "Q-" + of), LocalDate.of(2026, 1, 15),
                LocalDate.of(2026, 2, 14), like.shop(), like.language(), like.size(), like.billTo(),
                like.vendorNumber(), where(), RatesFixture.site().machines(), TERM, Optional.of(Billing.MONTHLY),
                new CleaningInterval(3, List.of(Phrase.of("reason.interval-recommended"))), tier().name(),
                List.of(none, singly, plan), calls(), List.of(year()), Optional.of(catchUp()),
                Optional.of(new PastCalls(2, amount("150"), amount("300"),
                        Explanation.of(Figure.term(2, "").times(Figure.price(amount("150"), ""))))),
                true, true,
                List.of(Phrase.of("remark.limit", new Fact.Amount(amount("400")))));
    }

    private PlanYear year() {
        return new PlanYear(tier(), work(), amount("760"), amount("76"), Optional.empty(), amount("5"), amount("690"),
                how());
    }

    private static Timetable timetable() {
        return new Timetable(135, 130, 2, 2, List.of(), List.of(
                new Timetable.Entry("m <1>", "pour", 60, Timetable.Kind.TASK, MachineState.CIRCULATING, List.of(0, 1),
                        0, 3, 2),
                new Timetable.Entry("m <1>", "pour", 60, Timetable.Kind.WAIT, MachineState.CIRCULATING, List.of(), 3,
                        23, 2)));
    }

    /** As many lines as the invoice has. */
    private List<PlanYear.SlotWork> work() {
        return calendar().firstYear().stream().map(visit -> new PlanYear.SlotWork(List.of(visit, visit), 2, 135,
                MinutesFrom.TIMETABLE, Optional.of(timetable()), LocalTime.of(7, 30),
                List.of(new PlanYear.MachineWork("back <room>",
                        List.of(Wording.same("brush"), new Wording("descale", "desincrustar")), 60)),
                like.lines(), amount("380"))).toList();
    }

    private CatchUpPrice catchUp() {
        CatchUpPrice.Found unknown = new CatchUpPrice.Found("cellar", Optional.empty(), List.of(), List.of(),
                Optional.empty());
        CatchUpPrice.Found scaled = new CatchUpPrice.Found("back room", Optional.of(LocalDate.of(2024, 11, 4)),
                List.of(new Wording("heavy scale", "mucha incrustación")), List.of(Wording.same("descale")),
                Optional.of("Scale <everywhere>."));
        return new CatchUpPrice(LocalDate.of(2026, 1, 10), List.of(unknown, scaled), amount("380"), like.lines(),
                amount("500"), amount("120"), plain("120"), amount("10"));
    }

    private List<CallCharge> calls() {
        return List.of(new CallCharge(RatesFixture.STANDARD, amount("52"), Optional.of(30),
                List.of(new CallCharge.Hour(new Wording("lead", "principal"), amount("98"), 60,
                        Optional.of(amount("130")), Optional.of(amount("65")),
                        Optional.of(new CallCharge.Overtime(480, amount("147")))),
                        new CallCharge.Hour(Wording.same("helper"), amount("58"), 0, Optional.empty(),
                                Optional.empty(), Optional.empty())),
                amount("150"), Optional.of(true)),
                new CallCharge(new Band("unknown", Wording.same("by night")), amount("104"), Optional.empty(),
                        List.of(), amount("300"), Optional.empty()));
    }

    private static Tier tier() {
        Tier tier = RatesFixture.tier("half-yearly", List.of(Scope.Kind.FULL_CLEAN, Scope.Kind.LIGHT_VISIT),
                new IncludedCalls(1, Percent.of("15")));
        List<Slot> slots = tier.slots().stream()
                .map(slot -> new Slot(slot.name(), new Scope(slot.scope().id(), slot.scope().name(),
                        slot.scope().kind(), slot.scope().tasks(), Place.NOWHERE)))
                .toList();
        return new Tier(tier.id(), new Wording("half <yearly>", "cada medio año"), slots,
                List.of(new Wording("misuse", "mal uso"), Wording.same("water & drain")), tier.response(),
                tier.included(), tier.discount(), tier.quantity(), tier.callDiscounts(), tier.step(), tier.cap(),
                Place.NOWHERE);
    }

    /** Closed from May to August, so that a visit moves. */
    private static VisitCalendar calendar() {
        Set<Month> season = Set.of(Month.JANUARY, Month.FEBRUARY, Month.MARCH, Month.APRIL, Month.SEPTEMBER,
                Month.OCTOBER, Month.NOVEMBER, Month.DECEMBER);
        return VisitCalendar.of(TERM, tier(), season, Optional.empty());
    }

    /** With as many payments as the invoice has lines, and at least those of the term. */
    ServiceAgreement agreement() {
        MonetaryAmount price = amount("1380");
        List<Installment> payments = Installments.of(TERM, price, Billing.QUARTERLY, Set.of());
        Proration change = Proration.of(TERM, LocalDate.of(2026, 5, 17), price, amount("1800"));
        return new ServiceAgreement("A-1", LocalDate.of(2026, 1, 20),
                Optional.of(new Acceptance(LocalDate.of(2026, 1, 18), "quote <7>")), like.shop(),
                like.language(), like.size(), like.billTo(), like.vendorNumber(),
                List.of(new ServiceAgreement.CareAt(where(),
                        Collections.nCopies(lines, RatesFixture.site().machines().getFirst()), Optional.empty(),
                        Optional.empty(), calendar(), work(), amount("690"), how(), calls(),
                        List.of(new ServiceAgreement.Change(List.of("cellar"), List.of("back room"), amount("210"),
                                change,
                                List.of(Phrase.of("reason.change-minutes",
                                        new Wording("full clean", "limpieza completa").named(),
                                        Fact.number(135, "min"), Fact.number(100, "min"),
                                        new Fact.Word("minutes-from.timetable")),
                                        Phrase.of("reason.change-minutes-unproven",
                                                new Wording("light", "ligera").named(),
                                                Fact.number(60, "min"), Fact.number(45, "min"), Fact.number(3, "min"))),
                                List.of(new PaymentChange.GivenBack(3, amount("12.5"))))))),
                tier(), amount("690"), how(), price, payments, Optional.of(Billing.QUARTERLY), RENEWAL, 30,
                Optional.of(refund(price, payments)), Optional.of("PO-<8>"), Optional.empty(),
                List.of(Phrase.of("reason.closed-to-the-end", new Fact.Day(LocalDate.of(2027, 7, 31)))));
    }

    private static RefundClause refund(MonetaryAmount price, List<Installment> payments) {
        LocalDate last = LocalDate.of(2026, 12, 31);
        Prepaid prepaid = new Prepaid(TERM, List.of(new Prepaid.Part(price, TERM.start())),
                List.of(new Prepaid.VisitShare(TERM.start(), price, true)));
        return new RefundClause(Earning.DAYS, last,
                Refund.of(List.of(prepaid), Earning.DAYS, last, payments.getFirst().amount().multiply(6)));
    }

    InstallmentInvoice installment() {
        return new InstallmentInvoice(like.number(), LocalDate.of(2026, 4, 30), LocalDate.of(2026, 5, 30), like.shop(),
                like.language(), like.size(), like.billTo(), like.vendorNumber(), "A-1", tier().name(), 2, 8,
                like.served(), Optional.empty(), like.lines(), like.totals(), List.of());
    }

    RenewalNotice renewal() {
        RenewalPrice price = RenewalPrice.of(amount("684"), new Raise.ByPercent(Percent.of("9")), amount("5"),
                Percent.of("5"));
        return new RenewalNotice(LocalDate.of(2027, 11, 1), like.shop(), like.language(), like.size(), like.billTo(),
                like.vendorNumber(), where(), "A-1", tier().name(),
                Collections.nCopies(lines, RatesFixture.site().machines().getFirst()), RENEWAL,
                RENEWAL.next(), price, List.of(), List.of(),
                Optional.empty(),
                List.of(Phrase.of("renewal.law", new Wording("a <law>", "una ley").named())));
    }

    ComparisonSheet comparison() {
        Explanation quotient = Explanation.of(Figure.price(amount("690"), "").over(Figure.price(amount("276"), "")));
        List<ComparisonSheet.CallLine> call = Collections.nCopies(lines,
                new ComparisonSheet.CallLine(Phrase.of("line.material", new Wording("labor", "mano de obra").named()),
                        amount("138"), Explanation.of(Figure.term(2, "h").times(Figure.price(amount("69"), "h")))));
        return new ComparisonSheet(LocalDate.of(2026, 1, 15), like.shop(), like.language(), like.size(),
                like.billTo().name(), where(), RatesFixture.site().machines(), RatesFixture.STANDARD, call,
                amount("276"), Optional.of(1),
                List.of(new ComparisonSheet.Plan(tier().name(), 1, 2, amount("690"), amount("760"), Optional.of(3),
                        quotient),
                        new ComparisonSheet.Plan(Wording.same("other"), 4, 4, amount("900"), amount("800"),
                                Optional.empty(), quotient)),
                List.of(new ComparisonSheet.Sum(1, amount("276"), plain("276")),
                        new ComparisonSheet.Sum(2, amount("552"), plain("552"))),
                List.of(Phrase.of("compare.not-promised")), Optional.empty());
    }

    /** The same, with what to expect of every way of care. */
    ComparisonSheet outlook() {
        ComparisonSheet sheet = comparison();
        Outlook.Span span = new Outlook.Span(amount("650"), amount("900"), amount("1250"),
                Optional.of(ChanceInTen.of(0.57)));
        List<Outlook.Way> ways = Arrays.stream(CareOptionKind.values()).map(kind -> new Outlook.Way(kind,
                kind == CareOptionKind.PAY_PER_CALL
                        ? Optional.empty()
                        : Optional.of(kind == CareOptionKind.INTERVAL ? Wording.same("4") : tier().name()),
                scope(kind), amount(kind == CareOptionKind.PAY_PER_CALL ? "0" : "690"), new BigDecimal("1.3"),
                new ChancesPerTenSites(5, 3, 2), span, span,
                kind == CareOptionKind.PAY_PER_CALL ? Optional.empty() : Optional.of(ChanceInTen.of(0)),
                kind == CareOptionKind.PAY_PER_CALL ? Optional.empty() : Optional.of(ChanceInTen.of(0.7)),
                new Outlook.ExpectedYear(amount(kind == CareOptionKind.PAY_PER_CALL ? "0" : "843.79"), amount("250"),
                        new Outlook.DirtCosts(amount("200"), amount("50"), amount("150"))),
                Optional.of(amount("1100")))).toList();
        return new ComparisonSheet(sheet.date(), sheet.shop(), sheet.language(), sheet.size(), sheet.customer(),
                sheet.where(), sheet.machines(), sheet.band(), List.of(), sheet.callPrice(), sheet.lastYear(),
                sheet.plans(), sheet.sums(), sheet.reasons(), Optional.of(new Outlook(3, tier().name(),
                        List.of(Phrase.of("outlook.pays-if", new Wording("half <yearly>", "semestral").named(),
                                new Fact.Amount(amount("690")), Fact.number(3, "call"), Fact.number(250, "")),
                                Phrase.of("outlook.pays-not", Fact.number(250, ""), Fact.number(200, ""),
                                        new Fact.Word("outlook.of-ten.8"))),
                        ways,
                        List.of(new Outlook.Beside(Phrase.of("outlook.beside.energy"),
                                Phrase.of("outlook.beside.energy-range", Fact.number(0, ""), Fact.number(300, ""),
                                        Fact.number(150, "")),
                                Phrase.of("outlook.mark.from-memory"))),
                        Collections.nCopies(2 * lines, new Outlook.Input(Phrase.of("outlook.in.last-year.fits",
                                Fact.number(3, "call"), new Fact.Measure(new BigDecimal("2.6"), "")),
                                Phrase.of("outlook.origin.visits",
                                        Fact.number(4, "visit")))),
                        List.of(Phrase.of("reason.interval-recommended")))));
    }

    private CareOptionScope scope(CareOptionKind kind) {
        return switch (kind) {
        case PAY_PER_CALL -> new CareOptionScope(0, 0, Optional.of(0), 0, 0, amount("0"), true);
        case BOOKED_SINGLY -> new CareOptionScope(2, 1, Optional.of(2), 1, 0, amount("153.79"), false);
        case AGREEMENT -> new CareOptionScope(2, 1, Optional.of(2), 1, 1, amount("153.79"), true);
        case INTERVAL -> new CareOptionScope(3, 3, Optional.empty(), 3, 0, amount("153.79"), true);
        };
    }

    /** For the owner. */
    OwnersOutlook owners() {
        Phrase head = Phrase.of("outlook.way.agreement", new Wording("half <yearly>", "semestral").named());
        Phrase value = Phrase.of("mine.value", new Fact.Amount(amount("690")));
        return new OwnersOutlook(LocalDate.of(2026, 1, 15), like.shop(), like.language(), like.size(),
                like.billTo().name(), where(), List.of(head, head),
                Collections.nCopies(lines, new OwnersOutlook.Line(Phrase.of("mine.planned"), List.of(value, value))),
                List.of(Phrase.of("mine.best", Fact.number(8, "month"), new Fact.Amount(amount("373")))), head,
                amount("-100"),
                List.of(new OwnersOutlook.Swing(Phrase.of("mine.swing.charges"), amount("-300"), amount("200")),
                        new OwnersOutlook.Swing(Phrase.of("mine.swing.run"), amount("-50"), amount("-150"))),
                List.of(Phrase.of("mine.conditional")));
    }

    /** One fit that was found, and one of too few stops. */
    FitSheet fit() {
        List<FitSheet.Point> points = List.of(new FitSheet.Point(new BigDecimal("5.5"), new BigDecimal("2.1")),
                new FitSheet.Point(new BigDecimal("11"), new BigDecimal("9.25")));
        FitSheet.Plot found = new FitSheet.Plot(Phrase.of("fit.water", new Fact.Word("fit.all")),
                List.of(Phrase.of("fit.counted", Fact.number(30, ""), Fact.number(6, ""))), points, points);
        FitSheet.Plot few = new FitSheet.Plot(Phrase.of("fit.condenser", new Wording("hotel", "hotel").named()),
                List.of(Phrase.of("fit.too-few", Fact.number(5, ""))), List.of(), List.of());
        List<FitSheet.Plot> plots = new ArrayList<>(Collections.nCopies(lines, few));
        plots.add(found);
        return new FitSheet(LocalDate.of(2026, 1, 15), like.shop(), like.language(), like.size(),
                Optional.of("runs <1>.csv"),
                plots, List.of(Phrase.of("fit.scaled"), Phrase.of("fit.restarts"),
                        Phrase.of("fit.left-out", Fact.number(2, "run"))),
                List.of("water:", "  usual: {by6: 2.10, by12: 9.25}"));
    }

    private Where where() {
        return new Where("Mill Lane", Optional.of("0042"), like.billTo().address());
    }

    private Explanation how() {
        return Explanation.of(Figure.price(amount("690"), ""),
                Phrase.of("reason.included-calls", Fact.number(1, "call"), new Fact.Amount(amount("5"))));
    }

    private Explanation plain(String number) {
        return Explanation.of(Figure.price(amount(number), ""));
    }

    private MonetaryAmount amount(String number) {
        return Amounts.of(new BigDecimal(number), like.totals().gross().getCurrency());
    }
}
