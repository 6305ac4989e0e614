package icequill.plans;

import icequill.agreement.Installment;
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
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Shop;
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
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Puts the notice together by which a customer learns that his agreement will renew itself. */
public record RenewalAssembly(WholeAgreement hand, BillTo billTo, Optional<NoticeRules> notices,
        Optional<RateSchedule> schedule) {

    /** What the notice says, or why its price is not known. */
    public Validated<RenewalNotice> notice(PaperOptions options, Optional<String> late) {
        Problems problems = new Problems();
        ended().ifPresent(problems::add);
        Optional<NoticePlan> plan = notices.map(rules -> plan(rules, options.date()));
        Optional<Problem> timing = plan.flatMap(found -> found.problem(options.date(), hand.request().scope().place()));
        if (late.isEmpty()) {
            timing.ifPresent(problems::add);
        } else if (timing.isEmpty() || late.get().isBlank()) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                    timing.isEmpty() ? "--late, but " + options.date() + " is in time" : "--late without a reason",
                    timing.isEmpty() ? "leave it out" : "--late \"why it comes late\", printed for the customer");
        }
        Validated<List<RenewalPrice>> prices = prices();
        problems.addAll(prices.problems());
        return problems.or(() -> notice(options, prices.orElseThrow(), late));
    }

    /** That it does not go on after its term, since somebody ended it. */
    private Optional<Problem> ended() {
        LocalDate last = renewal().terms().term().lastDay();
        if (hand.request().isPastEnd(last.plusDays(1))) {
            return Optional.of(new Problem(Code.NOT_ALLOWED, hand.request().scope().place(),
                    "it ends on " + hand.request().ended().orElseThrow().lastDay() + " and does not go on",
                    "an agreement that goes on"));
        }
        return hand.request().endingNotice()
                .map(day -> new Problem(Code.NOT_ALLOWED, hand.request().scope().place(),
                        "notice was given on " + day + ": it ends on " + last + " and does not go on",
                        "renewal without noticed, if that is wrong"));
    }

    /** When to send it, by the laws on record. */
    public NoticePlan plan(NoticeRules rules, LocalDate day) {
        return NoticePlan.of(renewal().terms(), renewal().jurisdictions(), rules,
                hand.first().setting().rates().labor().week()::isWorkday, day);
    }

    private RenewalNotice notice(PaperOptions options, List<RenewalPrice> prices, Optional<String> late) {
        Shop shop = hand.first().setting().shop();
        Site site = hand.site();
        RenewalTerms terms = renewal().terms();
        List<Phrase> laws = notices.map(rules -> plan(rules, options.date()).rules()).orElse(List.of())
                .stream()
                .map(NoticeRule::law).map(law -> Phrase.of("renewal.law", law)).toList();
        return new RenewalNotice(options.date(), shop, hand.language(options.language()),
                shop.paper(), billTo, site.customer().vendorNumber(), Where.of(site),
                hand.request().number(), hand.first().plan().tier().name(),
                staying().flatMap(state -> state.setting().site().machines().stream()).toList(), terms,
                terms.next(), together(prices), hand.isOverSeveralSites() ? bySite(prices) : List.of(),
                months(prices), late, laws);
    }

    /** The sites that are part of it at the end of the term. */
    private Stream<AgreementAtSite> staying() {
        return hand.sites().stream().filter(AgreementAtSite::isInAtTheEnd);
    }

    private List<RenewalNotice.SitePrice> bySite(List<RenewalPrice> prices) {
        List<AgreementAtSite> sites = staying().toList();
        return IntStream.range(0, sites.size()).mapToObj(i -> new RenewalNotice.SitePrice(
                Where.of(sites.get(i).setting().whole()), prices.get(i))).toList();
    }

    /** Of several sites the sum, each raised and rounded by itself. */
    private static RenewalPrice together(List<RenewalPrice> prices) {
        return prices.size() == 1
                ? prices.getFirst()
                : new RenewalPrice(prices.stream().map(RenewalPrice::old).reduce(MonetaryAmount::add).orElseThrow(),
                        prices.stream().map(RenewalPrice::price).reduce(MonetaryAmount::add).orElseThrow(),
                        Explanation.of(prices.stream().map(price -> Figure.price(price.price(), ""))
                                .reduce(Figure::plus).orElseThrow(), Phrase.of("reason.sum-of-sites")));
    }

    private List<Installment> months(List<RenewalPrice> prices) {
        List<AgreementAtSite> sites = staying().toList();
        return hand.together(IntStream.range(0, sites.size())
                .mapToObj(i -> sites.get(i).monthsFrom(prices.get(i).price())).toList());
    }

    private Renewal renewal() {
        return hand.request().renewal();
    }

    /** What a year costs at each site from the renewal on. */
    public Validated<List<RenewalPrice>> prices() {
        Problems problems = new Problems();
        if (renewal().raise().isEmpty() && hand.request().byMonth().isEmpty()) {
            return Validated.invalid(new Problem(Code.MISSING, hand.request().scope().place(),
                    "nothing says how the price of the renewal comes about",
                    "renewal: {raise: {percent: ...}}, or index, or repriced: true"));
        }
        List<RenewalPrice> prices = staying().flatMap(state -> problems.take(price(state)).stream()).toList();
        return problems.or(() -> prices);
    }

    private Validated<RenewalPrice> price(AgreementAtSite state) {
        if (state.request().byMonth().isPresent()) {
            return Validated.valid(state.goingOnPrice());
        }
        Tier tier = state.plan().tier();
        return raise(state)
                .map(raise -> RenewalPrice.of(state.currentYearPrice(), raise, tier.step(), tier.cap()));
    }

    private Validated<Raise> raise(AgreementAtSite state) {
        return switch (renewal().raise().orElseThrow()) {
        case RaiseBy.Given given -> Validated.valid(given.raise());
        case RaiseBy.Repricing repricing -> repriced(state);
        };
    }

    /** The year's price of the machines as they are now, by the rates of the first day of the renewal. */
    private Validated<Raise> repriced(AgreementAtSite state) {
        Problems problems = new Problems();
        Term next = renewal().terms().next();
        PlanSetting now = state.setting();
        PlanScope scope = now.scope().over(next);
        Optional<Rates> rates = schedule
                .flatMap(all -> problems.take(all.asOf(next.start(), Optional.of(now.whole()))));
        Optional<PlanSetting> setting = rates.map(prices -> now.at(prices, scope));
        Optional<Tier> tier = rates.flatMap(prices -> problems.take(prices.tier(hand.request().tier())));
        return problems.or(tier::orElseThrow).then(found -> state.pricing().of(setting.orElseThrow(), found))
                .map(plan -> new Raise.Repriced(plan.year().price()));
    }
}
