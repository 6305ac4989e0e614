package icequill.plans;

import icequill.agreement.Earning;
import icequill.agreement.NearestDay;
import icequill.agreement.PaymentChange.Back;
import icequill.agreement.PaymentChange.GivenBack;
import icequill.agreement.PlannedVisit;
import icequill.agreement.Prepaid;
import icequill.agreement.Refund;
import icequill.money.Amounts;
import icequill.request.AgreementRequest.Ended;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * An agreement that somebody ends before it would end by itself, as it stands without that.
 *
 * @param done days on which visits of the calendar were done, by the id of the site
 * @param day on which this is worked out: what is due after it, by the last day, is taken for done, since it is still promised
 */
public record EarlyEnd(WholeAgreement hand, LocalDate lastDay, Earning earning, Map<String, List<LocalDate>> done,
        LocalDate day) {

    public EarlyEnd {
        done = Map.copyOf(done);
    }

    /** What is given back of what was paid ahead for the term; empty where nothing is paid ahead, or the term is over by then. */
    public Optional<Refund> refund() {
        return isPaidAhead()
                ? Optional.of(Refund.of(hand.sites().stream().map(this::prepaid).toList(), earning, lastDay,
                        Amounts.sum(hand.sites().stream().map(this::paid).toList(), currency())))
                : Optional.empty();
    }

    boolean isPaidAhead() {
        return hand.request().scope().billing().isPresent() && hand.request().scope().term().contains(lastDay);
    }

    /** How it ends, with what goes back of which payments; of several sites those come first that come first in the agreement. */
    public Ended ended() {
        Map<String, Back> back = new HashMap<>();
        MonetaryAmount left = refund().map(Refund::amount).orElseGet(() -> Amounts.zero(currency()));
        for (AgreementAtSite site : hand.sites()) {
            if (left.isPositive()) {
                MonetaryAmount own = Amounts.smaller(left, Refund
                        .of(List.of(prepaid(site)), earning, lastDay, paid(site)).amount());
                Back parts = site.changed().givingBack(own, lastDay, site.invoiced());
                back.put(site.request().scope().site(), parts);
                left = left.subtract(
                        Amounts.sum(parts.all().stream().map(GivenBack::amount).toList(), currency()));
            }
        }
        return new Ended(lastDay, back);
    }

    /** What was asked for by the last day, before tax, at a site. */
    MonetaryAmount paid(AgreementAtSite site) {
        return site.changed().paidBy(lastDay, site.invoiced(), currency());
    }

    private Prepaid prepaid(AgreementAtSite site) {
        Set<LocalDate> slots = doneSlots(site);
        return site.prepaid(visit -> (!visit.date().isAfter(lastDay) && visit.date().isAfter(day))
                || slots.contains(visit.date()));
    }

    /** A visit that was done is that of the calendar whose day is nearest; of several near one day one is. */
    private Set<LocalDate> doneSlots(AgreementAtSite site) {
        return done.getOrDefault(site.request().scope().site(), List.of()).stream()
                .flatMap(visit -> NearestDay.of(site.plan().calendar().visits(), PlannedVisit::date, visit).stream())
                .map(PlannedVisit::date)
                .collect(Collectors.toSet());
    }

    private CurrencyUnit currency() {
        return hand.first().setting().rates().currency();
    }
}
