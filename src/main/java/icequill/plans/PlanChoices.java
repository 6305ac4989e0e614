package icequill.plans;

import icequill.agreement.CleaningInterval;
import icequill.agreement.Installment;
import icequill.agreement.Tier;
import icequill.document.PlanChoice;
import icequill.document.PlanChoice.Kind;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.Wording;
import icequill.pricer.PricedSlot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * All ways of having a site's machines looked after, side by side.
 *
 * @param plans at least one
 */
public record PlanChoices(List<PricedPlan> plans, CleaningInterval interval) {

    private static final String MONTH = "month";

    List<PlanChoice> all() {
        List<PlanChoice> choices = new ArrayList<>(List.of(payPerCall(), bookedSingly()));
        plans.forEach(plan -> choices.add(agreement(plan)));
        return choices;
    }

    /**
     * The plan whose cleanings are the yardstick: of those whose full cleanings are as close together as recommended the one
     * with the fewest visits, or else the one with the most full cleanings.
     */
    public PricedPlan yardstick() {
        return plans.stream().filter(plan -> plan.tier().meets(interval))
                .min(Comparator.comparingInt(plan -> plan.tier().slots().size()))
                .or(() -> plans.stream().max(Comparator.comparingLong(plan -> fullCleans(plan)))).orElseThrow();
    }

    private CurrencyUnit currency() {
        return plans.getFirst().setting().rates().currency();
    }

    private PlanChoice payPerCall() {
        MonetaryAmount zero = Amounts.zero(currency());
        return new PlanChoice(Kind.PAY_PER_CALL, Optional.empty(), 0, 0, Optional.empty(), zero,
                Explanation.of(Figure.price(zero, "")), zero, List.of(), List.of(Phrase.of("choice.pay-per-call"),
                        Phrase.of("choice.no-cleaning", months(interval.months()))));
    }

    private PlanChoice bookedSingly() {
        PricedPlan plan = yardstick();
        Figure sum = plan.year().slots().stream().map(slot -> Figure.price(slot.priced().net(), ""))
                .reduce(Figure::plus).orElseThrow();
        List<Phrase> reasons = new ArrayList<>(List.of(Phrase.of("choice.booked-singly", name(plan.tier()))));
        reasons.addAll(spacing(plan.tier()));
        return new PlanChoice(Kind.BOOKED_SINGLY, Optional.of(plan.tier().name()), plan.year().slots().size(),
                (int) fullCleans(plan), plan.tier().monthsBetweenFullCleans(), plan.year().list(),
                Explanation.of(sum), new PlanYearAssembly(plan).taxBookedSingly(), List.of(), reasons);
    }

    private PlanChoice agreement(PricedPlan plan) {
        List<Installment> payments = plan.firstPayments();
        InstallmentTax tax = new InstallmentTax(plan.setting());
        MonetaryAmount taxes = Amounts.sum(payments.stream().map(payment -> tax.estimated(payment).tax()).toList(),
                currency());
        List<Phrase> reasons = new ArrayList<>(spacing(plan.tier()));
        reasons.addAll(perks(plan));
        return new PlanChoice(Kind.AGREEMENT, Optional.of(plan.tier().name()), plan.year().slots().size(),
                (int) fullCleans(plan), plan.tier().monthsBetweenFullCleans(), plan.year().price(), plan.year().how(),
                taxes, payments, reasons);
    }

    private static long fullCleans(PricedPlan plan) {
        return plan.year().slots().stream().map(PricedSlot::visit)
                .filter(visit -> visit.slot().scope().isFullClean()).count();
    }

    /** How far apart full cleanings are, against what is recommended. */
    private List<Phrase> spacing(Tier tier) {
        Fact recommended = months(interval.months());
        return List.of(tier.monthsBetweenFullCleans()
                .map(gap -> Phrase.of(tier.meets(interval) ? "choice.often-enough" : "choice.too-seldom", months(gap),
                        recommended))
                .orElseGet(() -> Phrase.of("choice.no-cleaning", recommended)));
    }

    private static List<Phrase> perks(PricedPlan plan) {
        Tier tier = plan.tier();
        List<Phrase> perks = new ArrayList<>();
        if (!plan.year().discount().isZero()) {
            perks.add(plan.year().discountPerk());
        }
        if (tier.included().number() > 0) {
            perks.add(Phrase.of("choice.included-calls", Fact.number(tier.included().number(), "call")));
        }
        perks.addAll(tier.callTerms());
        return perks;
    }

    private static Fact name(Tier tier) {
        Wording name = tier.name();
        return name.named();
    }

    private static Fact months(int months) {
        return Fact.number(months, MONTH);
    }
}
