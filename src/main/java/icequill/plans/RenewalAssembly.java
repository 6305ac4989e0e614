package icequill.plans;

import icequill.agreement.NoticePlan;
import icequill.agreement.NoticeRule;
import icequill.agreement.NoticeRules;
import icequill.agreement.Raise;
import icequill.agreement.RenewalPrice;
import icequill.agreement.RenewalTerms;
import icequill.agreement.Term;
import icequill.agreement.Tier;
import icequill.document.RenewalNotice;
import icequill.document.Where;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.RateSchedule;
import icequill.rates.Rates;
import icequill.request.AgreementRequest.RaiseBy;
import icequill.request.AgreementRequest.Renewal;
import icequill.request.PaperOptions;
import icequill.request.PlanScope;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Puts the notice together by which a customer learns that his agreement will renew itself. */
public record RenewalAssembly(AgreementState hand, BillTo billTo, Optional<NoticeRules> notices,
        Optional<RateSchedule> schedule) {

    /** What the notice says, or why its price is not known. */
    public Validated<RenewalNotice> notice(PaperOptions options, Optional<String> late) {
        Problems problems = new Problems();
        Optional<NoticePlan> plan = notices.map(rules -> plan(rules, options.date()));
        Optional<Problem> timing = plan.flatMap(found -> found.problem(options.date(), hand.request().scope().place()));
        if (late.isEmpty()) {
            timing.ifPresent(problems::add);
        } else if (timing.isEmpty() || late.get().isBlank()) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                    timing.isEmpty() ? "--late, but " + options.date() + " is in time" : "--late without a reason",
                    timing.isEmpty() ? "leave it out" : "--late \"why it comes late\", printed for the customer");
        }
        problems.addAll(price().problems());
        return problems.or(() -> notice(options, price().orElseThrow(), late));
    }

    /** When to send it, by the laws on record. */
    public NoticePlan plan(NoticeRules rules, LocalDate day) {
        return NoticePlan.of(renewal().terms(), renewal().jurisdictions(), rules,
                hand.setting().rates().labor().week()::isWorkday, day);
    }

    private RenewalNotice notice(PaperOptions options, RenewalPrice price, Optional<String> late) {
        PlanSetting setting = hand.setting();
        Site site = setting.whole();
        RenewalTerms terms = renewal().terms();
        List<Phrase> laws = notices.map(rules -> plan(rules, options.date()).rules()).orElse(List.of())
                .stream()
                .map(NoticeRule::law).map(law -> Phrase.of("renewal.law", law)).toList();
        return new RenewalNotice(options.date(), setting.shop(), hand.language(options.language()),
                setting.shop().paper(), billTo, site.customer().vendorNumber(), Where.of(site),
                hand.request().number(), hand.plan().tier().name(), setting.site().machines(), terms,
                terms.next(), price, hand.monthsFrom(price.price()), late, laws);
    }

    private Renewal renewal() {
        return hand.request().renewal();
    }

    private Validated<RenewalPrice> price() {
        if (hand.request().byMonth().isPresent()) {
            return Validated.valid(hand.goingOnPrice());
        }
        Tier tier = hand.plan().tier();
        return raise().map(raise -> RenewalPrice.of(hand.currentYearPrice(), raise, tier.step(), tier.cap()));
    }

    private Validated<Raise> raise() {
        if (renewal().raise().isEmpty()) {
            return Validated.invalid(new Problem(Code.MISSING, hand.request().scope().place(),
                    "nothing says how the price of the renewal comes about",
                    "renewal: {raise: {percent: ...}}, or index, or repriced: true"));
        }
        return switch (renewal().raise().get()) {
        case RaiseBy.Given given -> Validated.valid(given.raise());
        case RaiseBy.Repricing repricing -> repriced();
        };
    }

    /** The year's price of the machines as they are now, by the rates of the first day of the renewal. */
    private Validated<Raise> repriced() {
        Problems problems = new Problems();
        Term next = renewal().terms().next();
        PlanScope scope = hand.setting().scope().over(next);
        Optional<Rates> rates = schedule
                .flatMap(all -> problems.take(all.asOf(next.start(), Optional.of(hand.setting().whole()))));
        PlanSetting now = hand.setting();
        Optional<PlanSetting> setting = rates.map(prices -> new PlanSetting(now.shop(), now.whole(), now.site(),
                prices, now.place(), scope));
        Optional<Tier> tier = rates.flatMap(prices -> problems.take(prices.tier(hand.request().tier())));
        return problems.or(tier::orElseThrow).then(found -> hand.pricing().of(setting.orElseThrow(), found))
                .map(plan -> new Raise.Repriced(plan.year().price()));
    }
}
