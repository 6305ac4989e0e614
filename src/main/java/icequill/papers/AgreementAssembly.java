package icequill.papers;

import icequill.agreement.Earning;
import icequill.agreement.Installment;
import icequill.agreement.PaymentChange;
import icequill.agreement.Refund;
import icequill.document.CallCharge;
import icequill.document.RefundClause;
import icequill.document.ServiceAgreement;
import icequill.document.Where;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.plans.AgreementState;
import icequill.plans.CallCharges;
import icequill.plans.PlanSetting;
import icequill.plans.PlanYearAssembly;
import icequill.plans.PricedPlan;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Puts the paper of an agreement together. */
public record AgreementAssembly(AgreementState hand, BillTo billTo, Earning earning) {

    public Validated<ServiceAgreement> agreement(PaperOptions options) {
        return new CallCharges(hand.setting(), options.date()).all().map(calls -> agreement(options, calls));
    }

    private ServiceAgreement agreement(PaperOptions options, List<CallCharge> calls) {
        PlanSetting setting = hand.setting();
        PricedPlan plan = hand.plan();
        Site site = setting.whole();
        return new ServiceAgreement(hand.request().number(), options.date(), hand.request().accepted(), setting.shop(),
                hand.language(options.language()), setting.shop().paper(), billTo, site.customer().vendorNumber(),
                Where.of(site), machines(), plan.tier().promised(), plan.calendar(),
                new PlanYearAssembly(plan).visits(),
                hand.yearPrice(), hand.how(), plan.termPrice(hand.yearPrice()), hand.termPayments(),
                hand.request().scope().billing(), calls, hand.request().renewal().terms(),
                hand.request().cancelDays(), hand.request().scope().billing().map(billed -> refund(plan)),
                hand.request().purchaseOrder(), hand.changes(), remarks(plan));
    }

    private List<Machine> machines() {
        return hand.plan().setting().site().machines();
    }

    /** The clause with an example: an end a month after the middle of the term, everything until then paid and done. */
    private RefundClause refund(PricedPlan plan) {
        LocalDate last = plan.term().start().plusMonths(plan.term().months() / 2 + 1L).minusDays(1);
        MonetaryAmount paid = Amounts.sum(hand.termPayments().stream().filter(payment -> !payment.due().isAfter(last))
                .map(Installment::amount).toList(), plan.setting().rates().currency());
        MonetaryAmount kept = hand.changes().stream().filter(change -> !change.price().from().isAfter(last))
                .flatMap(change -> change.givenBack().stream()).map(PaymentChange.GivenBack::amount)
                .reduce(paid, MonetaryAmount::subtract);
        return new RefundClause(earning, last, Refund.of(hand.prepaid(last), earning, last, kept));
    }

    private static List<Phrase> remarks(PricedPlan plan) {
        return Stream.concat(
                plan.visits().stream().flatMap(slot -> slot.remarks().stream()),
                plan.calendar().leftOut().stream().map(left -> left.why())).distinct().toList();
    }
}
