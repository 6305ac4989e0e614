package icequill.plans;

import icequill.agreement.Installment;
import icequill.agreement.NearestDay;
import icequill.agreement.PaymentChange.GivenBack;
import icequill.agreement.PlannedVisit;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.request.AgreementRequest.Ended;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What an owner who sells keeps of an agreement, and what goes over to the new one; both together are all of it, to the cent.
 *
 * @param end of the former owner's, on the day before the first one of the new
 */
public record Handover(EarlyEnd end) {

    /** How it ends for the former owner. */
    public Ended ended() {
        Map<String, LocalDate> over = new HashMap<>();
        end.hand().sites().stream().filter(AgreementAtSite::isInAtTheEnd).forEach(site -> firstVisit(site)
                .ifPresent(visit -> over.put(site.request().scope().site(), visit.date())));
        return new Ended(end.lastDay(), end.ended().givenBack(), over);
    }

    /**
     * The first visit that goes over: after the last that was done, and of those that are over by then and were not done only the one that
     * is not missed yet, since the next one is still to come.
     */
    private Optional<PlannedVisit> firstVisit(AgreementAtSite site) {
        LocalDate from = end.lastDay().plusDays(1);
        List<PlannedVisit> all = site.calendar().visits();
        int next = (int) all.stream().filter(visit -> visit.date().isBefore(from)).count();
        int late = next > 0 && (next == all.size() || all.get(next).date().isAfter(from)) ? next - 1 : next;
        int done = end.done().getOrDefault(site.request().scope().site(), List.of()).stream()
                .flatMap(visit -> NearestDay.of(all, PlannedVisit::date, visit).stream()).mapToInt(all::indexOf).max()
                .orElse(-1);
        return all.stream().skip(Math.max(late, done + 1)).findFirst();
    }

    /**
     * What the new owner is asked for at a site: the price of the term less what the former one is asked for and keeps; where each visit is paid
     * when it is done, what those cost that go over.
     *
     * @param ended how it ends for the former owner
     */
    public Explanation rest(AgreementAtSite site, Ended ended) {
        String id = site.request().scope().site();
        if (!end.isPaidAhead()) {
            return Explanation.of(site.changed().payments().stream()
                    .filter(payment -> ended.goesOver(id, payment.due())).map(Installment::amount)
                    .map(amount -> Figure.price(amount, "")).reduce(Figure::plus)
                    .orElseGet(() -> Figure.price(Amounts.zero(currency()), "")),
                    Phrase.of("reason.rest-visits", new Fact.Day(end.lastDay().plusDays(1))));
        }
        MonetaryAmount borne = end.paid(site).subtract(Amounts.sum(ended.at(id).all().stream().map(GivenBack::amount)
                .toList(), currency()));
        return Explanation.of(Figure.price(site.wholePrice(), "").minus(Figure.price(borne, "")),
                Phrase.of("reason.rest-of-term", new Fact.Amount(site.wholePrice()), new Fact.Amount(borne),
                        new Fact.Day(end.lastDay())));
    }

    /** The amount of the same, before tax. */
    public MonetaryAmount restPrice(AgreementAtSite site, Ended ended) {
        return rest(site, ended).amount(currency());
    }

    private CurrencyUnit currency() {
        return end.hand().first().setting().rates().currency();
    }
}
