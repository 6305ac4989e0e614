package icequill.papers;

import icequill.agreement.Earning;
import icequill.agreement.Installment;
import icequill.agreement.PaymentChange;
import icequill.agreement.PlannedVisit;
import icequill.agreement.Refund;
import icequill.agreement.Term;
import icequill.document.PlanYear.SlotWork;
import icequill.document.ServiceAgreement;
import icequill.document.ServiceAgreement.CareAt;
import icequill.document.ServiceAgreement.RefundClause;
import icequill.document.Where;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Shop;
import icequill.plans.AgreementAtSite;
import icequill.plans.CallCharges;
import icequill.plans.PlanYearAssembly;
import icequill.plans.WholeAgreement;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import icequill.request.PaperOptions;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Puts the paper of an agreement together. */
public record AgreementAssembly(WholeAgreement hand, BillTo billTo, Earning earning) {

    private static final int YEAR = 12;

    public Validated<ServiceAgreement> agreement(PaperOptions options) {
        Problems problems = new Problems();
        List<CareAt> sites = hand.sites().stream()
                .flatMap(state -> problems.take(care(state, options)).stream()).toList();
        return problems.or(() -> agreement(options, sites));
    }

    private ServiceAgreement agreement(PaperOptions options, List<CareAt> sites) {
        AgreementAtSite first = hand.first();
        Shop shop = first.setting().shop();
        return new ServiceAgreement(hand.request().number(), options.date(), hand.request().accepted(), shop,
                hand.language(options.language()), shop.paper(), billTo, hand.site().customer().vendorNumber(), sites,
                first.plan().tier().promised(), hand.yearPrice(), hand.how(),
                hand.termPrice(), hand.termPayments(), hand.request().scope().billing(),
                hand.request().renewal().terms(), hand.request().cancelDays(),
                hand.request().scope().billing().map(billed -> refund()), hand.request().orders().on(options.date()),
                hand.request().rest(),
                remarks());
    }

    private static Validated<CareAt> care(AgreementAtSite state, PaperOptions options) {
        return new CallCharges(state.setting(), options.date()).all().map(calls -> new CareAt(
                Where.of(state.setting().whole()), state.plan().setting().site().machines(),
                state.request().part().flatMap(AgreementRequest.Part::from),
                state.request().part().flatMap(AgreementRequest.Part::until), state.calendar(),
                work(state), state.plannedYearPrice(), state.how(), calls,
                state.changes()));
    }

    /** What is done on the visits of the days on which the site is part of it. */
    private static List<SlotWork> work(AgreementAtSite state) {
        List<PlannedVisit> year = firstYear(state.calendar().visits(), state.request().rest().isPresent());
        return new PlanYearAssembly(state.plan()).visits().stream().map(work -> new SlotWork(
                year.stream().filter(visit -> isLike(visit, work)).toList(), work.people(),
                work.minutes(), work.from(), work.timetable(), work.arrival(), work.machines(), work.lines(),
                work.net())).filter(work -> !work.visits().isEmpty()).toList();
    }

    /** The visits of the first twelve months: of the term, or from the first one that a new owner has of it. */
    private static List<PlannedVisit> firstYear(List<PlannedVisit> visits, boolean isTakenOver) {
        int first = isTakenOver && !visits.isEmpty() ? visits.getFirst().begun() : 0;
        return visits.stream().filter(visit -> visit.begun() < first + YEAR).toList();
    }

    /** Whether a visit is one of those that were priced for a year, or of the same time in a later one. */
    private static boolean isLike(PlannedVisit visit, SlotWork work) {
        return work.visits().stream().anyMatch(first -> first.begun() == visit.begun() % YEAR);
    }

    /** The clause with an example: an end a month after the middle of the term, everything until then paid and done. */
    private RefundClause refund() {
        Term term = hand.first().plan().term();
        LocalDate middle = term.start().plusMonths(term.months() / 2 + 1L).minusDays(1);
        LocalDate last = middle.isBefore(hand.request().firstDay())
                ? term.lastOfMonth(hand.request().firstDay())
                : middle;
        MonetaryAmount paid = hand.sites().stream().map(state -> paid(state, last)).reduce(MonetaryAmount::add)
                .orElseThrow();
        return new RefundClause(earning, last, Refund
                .of(hand.sites().stream().map(state -> state.prepaid(last)).toList(), earning, last, paid));
    }

    private static MonetaryAmount paid(AgreementAtSite state, LocalDate last) {
        MonetaryAmount due = Amounts.sum(state.termPayments().stream().filter(payment -> !payment.due().isAfter(last))
                .map(Installment::amount).toList(), state.setting().rates().currency());
        return state.changes().stream().filter(change -> !change.price().from().isAfter(last))
                .flatMap(change -> change.givenBack().stream()).map(PaymentChange.GivenBack::amount)
                .reduce(due, MonetaryAmount::subtract);
    }

    private List<Phrase> remarks() {
        return hand.sites().stream().map(AgreementAtSite::plan).flatMap(plan -> Stream.concat(
                plan.visits().stream().flatMap(slot -> slot.remarks().stream()),
                plan.calendar().leftOut().stream().map(left -> left.why()))).distinct().toList();
    }
}
