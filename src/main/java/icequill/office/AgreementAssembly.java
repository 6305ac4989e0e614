package icequill.office;

import icequill.document.CallCharge;
import icequill.document.ServiceAgreement;
import icequill.document.Where;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Rounding;
import icequill.party.BillTo;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.problem.Checked;
import java.util.List;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Puts the paper of an agreement together. */
record AgreementAssembly(AgreementInHand hand, BillTo billTo) {

    Checked<ServiceAgreement> agreement(Office.Wish wish) {
        return new CallCharges(hand.setting(), wish.date()).all().map(calls -> agreement(wish, calls));
    }

    private ServiceAgreement agreement(Office.Wish wish, List<CallCharge> calls) {
        PlanSetting setting = hand.setting();
        PricedPlan plan = hand.plan();
        Site site = setting.whole();
        return new ServiceAgreement(hand.request().number(), wish.date(), hand.request().accepted(), setting.shop(),
                hand.language(wish.language()), setting.shop().paper(), billTo, site.customer().vendorNumber(),
                Where.of(site), machines(), plan.tier(), plan.calendar(), new PlanYearAssembly(plan).visits(),
                hand.yearPrice(), hand.how(), plan.termPrice(hand.yearPrice()), hand.payments(),
                hand.request().scope().billing(), calls, hand.request().renewal().terms(),
                hand.request().cancelDays(), refund(plan), hand.changes(), remarks(plan));
    }

    private List<Machine> machines() {
        return hand.plan().setting().site().machines();
    }

    /** What the whole term costs, by its days. */
    private Explanation refund(PricedPlan plan) {
        MonetaryAmount price = plan.termPrice(hand.yearPrice());
        return Explanation.of(
                Figure.price(price, "").over(Figure.term(plan.term().days(), "day"))
                        .rounded(Rounding.PRORATION, price.getCurrency()),
                Phrase.of("reason.refund", Fact.number(plan.term().days(), "day")));
    }

    private static List<Phrase> remarks(PricedPlan plan) {
        return Stream.concat(
                plan.visits().stream().flatMap(slot -> slot.remarks().stream()),
                plan.calendar().leftOut().stream().map(left -> left.why())).distinct().toList();
    }
}
