package icequill.office;

import icequill.agreement.Installment;
import icequill.agreement.Proration;
import icequill.agreement.Tier;
import icequill.document.AgreementRequest;
import icequill.document.AgreementRequest.Change;
import icequill.document.ServiceAgreement;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.files.ShopFolder;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.work.Visit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * An agreement that was read and priced.
 *
 * @param plan at its beginning
 * @param changes each with what it adds to the price
 * @param payments as they are after all changes
 */
record AgreementInHand(PlanSetting setting, AgreementRequest request, PricedPlan plan,
        List<ServiceAgreement.Change> changes, List<Installment> payments) {

    /**
     * Reads and prices an agreement; one report holds all that is wrong with it and with the rates.
     *
     * @param day whose tax rules hold
     */
    static Checked<AgreementInHand> of(ShopFolder folder, Path file, LocalDate day) {
        Problems problems = new Problems();
        Optional<AgreementInHand> hand = read(folder, file, day, problems);
        return VisitInHand.report(folder, problems).or(hand::orElseThrow);
    }

    /** The agreement as far as it could be worked out; empty where something is missing, which was reported. */
    static Optional<AgreementInHand> read(ShopFolder folder, Path file, LocalDate day, Problems problems) {
        Optional<AgreementRequest> request = folder.agreement(file);
        Optional<PlanSetting> setting = request
                .flatMap(found -> PlanSetting.read(folder, found.scope(), found.priced(), day, problems));
        Optional<Tier> tier = setting
                .flatMap(found -> PlanInHand.tier(found, request.orElseThrow().tier(), problems));
        if (tier.isEmpty() || !folder.problems().isEmpty()) {
            return Optional.empty();
        }
        return problems.take(PricedPlan.of(setting.orElseThrow(), tier.get())
                .then(plan -> changed(setting.orElseThrow(), request.orElseThrow(), plan)));
    }

    private static Checked<AgreementInHand> changed(PlanSetting setting, AgreementRequest request, PricedPlan plan) {
        MonetaryAmount yearPrice = yearPrice(request, plan);
        List<Installment> payments = plan.payments(yearPrice);
        AgreementInHand unchanged = new AgreementInHand(setting, request, plan, List.of(), payments);
        Checked<AgreementInHand> hand = Checked.sound(unchanged);
        for (Change change : request.changes()) {
            hand = hand.then(before -> before.with(change));
        }
        return hand;
    }

    private static MonetaryAmount yearPrice(AgreementRequest request, PricedPlan plan) {
        return request.agreed().map(AgreementRequest.Agreed::price).orElse(plan.year().price());
    }

    /** The same with one more change: what the rates give with it, less what they give without it, for the days left. */
    private AgreementInHand with(Change change, PlanSetting after, PricedPlan before, PricedPlan priced) {
        Proration price = Proration.of(plan.term(), change.from(), before.termPrice(before.year().price()),
                priced.termPrice(priced.year().price()), payments);
        List<ServiceAgreement.Change> all = new ArrayList<>(changes);
        all.add(new ServiceAgreement.Change(names(change.added()), names(change.removed()),
                priced.year().price().subtract(before.year().price()), price));
        return new AgreementInHand(after, request, plan, all, merged(price));
    }

    private Checked<AgreementInHand> with(Change change) {
        Problems problems = new Problems();
        Set<String> ids = new LinkedHashSet<>(setting.site().machines().stream().map(Machine::id).toList());
        List<String> all = setting.whole().machines().stream().map(Machine::id).toList();
        for (Visit.Named added : change.added()) {
            if (PlanSetting.isKnown(added, all, problems) && !ids.add(added.id())) {
                problems.add(new Problem(Code.NOT_ALLOWED, added.place(),
                        added.id() + " is looked after already", "a machine that is not yet part of the agreement"));
            }
        }
        for (Visit.Named removed : change.removed()) {
            if (PlanSetting.isKnown(removed, all, problems) && !ids.remove(removed.id())) {
                problems.add(new Problem(Code.NOT_ALLOWED, removed.place(), removed.id() + " is not looked after",
                        "a machine that is part of the agreement"));
            }
        }
        if (ids.isEmpty()) {
            problems.add(new Problem(Code.NOT_ALLOWED, request.scope().place(),
                    "no machine is left on " + change.from(), "an agreement that ends on that day instead"));
        }
        return problems.or(() -> setting.withMachines(ids)).then(after -> PricedPlan.of(setting, plan.tier())
                .then(before -> PricedPlan.of(after, plan.tier()).map(priced -> with(change, after, before, priced))));
    }

    private List<String> names(List<Visit.Named> machines) {
        return machines.stream().flatMap(named -> setting.whole().machine(named.id()).stream()).map(Machine::where)
                .toList();
    }

    /** Each share of a change is paid with the payment of its number; where none is left, by itself. */
    private List<Installment> merged(Proration change) {
        Stream<Installment> changed = payments.stream().map(payment -> change.shares().stream()
                .filter(share -> share.number() == payment.number()).findFirst()
                .map(share -> sum(payment, share)).orElse(payment));
        Stream<Installment> added = change.shares().stream()
                .filter(share -> payments.stream().noneMatch(payment -> payment.number() == share.number()));
        return Stream.concat(changed, added).collect(Collectors.toUnmodifiableList());
    }

    private static Installment sum(Installment payment, Installment share) {
        Explanation how = new Explanation(Figure.price(payment.amount(), "").plus(Figure.price(share.amount(), "")),
                payment.how().reasons()).because(Phrase.of("reason.change-share", new Fact.Amount(share.amount())));
        return new Installment(payment.number(), payment.due(), payment.amount().add(share.amount()), how);
    }

    MonetaryAmount yearPrice() {
        return yearPrice(request, plan);
    }

    /** A year's price with the machines as they are after all changes. */
    MonetaryAmount currentYearPrice() {
        return changes.stream().map(ServiceAgreement.Change::yearDifference).reduce(yearPrice(), MonetaryAmount::add);
    }

    /** How the year's price was figured, or where it comes from. */
    Explanation how() {
        return request.agreed().map(agreed -> Explanation.of(Figure.price(agreed.price(), ""),
                Phrase.of("reason.agreed-price", new Fact.Text(agreed.from())))).orElse(plan.year().how());
    }

    Language language(Optional<Language> wanted) {
        return wanted.or(() -> setting.site().customer().language()).orElse(setting.shop().language());
    }
}
