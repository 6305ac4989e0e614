package icequill.plans;

import icequill.agreement.Installment;
import icequill.agreement.Invoiced;
import icequill.agreement.Tier;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * An agreement over all its sites, which are priced one by one and paid together.
 *
 * @param sites at least one; several of one customer, paid on the same days
 */
public record WholeAgreement(List<AgreementAtSite> sites) {

    /** A site by which it is priced, and the plan that it is on. */
    public record Priced(PlanSetting setting, Tier tier, TierPricing pricing) {}

    public WholeAgreement {
        sites = List.copyOf(sites);
    }

    /**
     * The priced agreement, or what of it cannot be priced.
     *
     * @param settings of the sites, in the order of the request's
     * @param invoiced of the whole agreement at one of its sites, by its id
     * @param day as of which it is known which months it goes on for
     */
    public static Validated<WholeAgreement> of(AgreementRequest request, List<Priced> settings,
            BiFunction<AgreementRequest, String, Validated<Invoiced>> invoiced, LocalDate day) {
        Beside.Of all = new Beside.Of(request.sites(), settings.stream().map(Priced::setting)
                .map(PlanSetting::whole).toList());
        Problems problems = new Problems();
        List<AgreementAtSite> states = new ArrayList<>();
        for (int i = 0; i < settings.size(); i++) {
            Priced priced = settings.get(i);
            int site = i;
            problems.take(
                    AgreementAtSite.begun(priced.setting(), priced.tier(), priced.pricing(), invoiced, day, all, i)
                            .then(begun -> ChangesOfDay.through(begun, all, site)))
                    .ifPresent(states::add);
        }
        return problems.or(() -> new WholeAgreement(states));
    }

    /** The first of the sites, by which the agreement goes. */
    public AgreementAtSite first() {
        return sites.getFirst();
    }

    public boolean isOverSeveralSites() {
        return sites.size() > 1;
    }

    public AgreementRequest request() {
        return first().request();
    }

    public Site site() {
        return first().setting().whole();
    }

    /** Who pays on a day, for all sites that are in on it. */
    public Validated<BillTo> billTo(LocalDate day) {
        Problems problems = new Problems();
        List<BillTo> payers = sites.stream().filter(state -> state.request().isHere(day))
                .map(state -> state.setting().whole())
                .flatMap(site -> problems.take(site.billTo(day)).stream()).distinct().toList();
        if (payers.size() > 1) {
            problems.add(Code.NOT_ALLOWED, request().scope().place(),
                    "its sites have other payers on " + day + ": "
                            + payers.stream().map(BillTo::name).collect(Collectors.joining(", ")),
                    "one bill-to for all of them, or an agreement for each");
        }
        return problems.or(payers::getFirst);
    }

    public Language language(Optional<Language> wanted) {
        return first().language(wanted);
    }

    /** The payments of all sites together, with those for months after the term up to the next one. */
    public List<Installment> payments() {
        return together(sites.stream().map(AgreementAtSite::payments).toList());
    }

    /** The same without months after the term. */
    public List<Installment> termPayments() {
        return together(sites.stream().map(AgreementAtSite::termPayments).toList());
    }

    /** What several sites pay, payment by payment. */
    List<Installment> together(List<List<Installment>> bySite) {
        if (bySite.size() == 1) {
            return bySite.getFirst();
        }
        List<Integer> numbers = bySite.stream().flatMap(List::stream).map(Installment::number).distinct().sorted()
                .toList();
        return numbers.stream().map(number -> sum(bySite.stream().flatMap(List::stream)
                .filter(payment -> payment.number() == number).toList())).toList();
    }

    /** What changes add at several sites under one number is asked for on the last of their days, so of none too early. */
    private Installment sum(List<Installment> payments) {
        LocalDate due = payments.stream().map(Installment::due).max(LocalDate::compareTo).orElseThrow();
        Explanation how = Explanation.of(payments.stream().map(payment -> Figure.price(payment.amount(), ""))
                .reduce(Figure::plus).orElseThrow(), Phrase.of("reason.sum-of-sites"));
        return new Installment(payments.getFirst().number(), due, how.amount(currency()), how);
    }

    /** Whether a payment asks for something: changes may have given all of it back. */
    public boolean isPayable(Installment payment) {
        return payment.amount().isGreaterThan(givenBack(payment.number()));
    }

    /** What changes give back of a payment. */
    public MonetaryAmount givenBack(int payment) {
        return givenBack(sites.stream(), payment);
    }

    /** What changes give back of a payment's part for a site, by its id. */
    public MonetaryAmount givenBackAt(String site, int payment) {
        return givenBack(sites.stream().filter(state -> state.setting().whole().id().equals(site)), payment);
    }

    private MonetaryAmount givenBack(Stream<AgreementAtSite> some, int payment) {
        return Amounts.sum(some.flatMap(site -> site.payments().stream()
                .filter(one -> one.number() == payment).map(site.changed()::givenBack)).toList(), currency());
    }

    /** What was invoiced at all sites together; empty where no change makes it matter. */
    public Optional<Invoiced> known() {
        if (request().ended().isEmpty() && request().sites().stream().allMatch(site -> site.changes().isEmpty()
                && site.part().filter(part -> part.from().or(part::until).isPresent()).isEmpty())) {
            return Optional.empty();
        }
        Map<Integer, MonetaryAmount> nets = new HashMap<>();
        sites.forEach(site -> site.invoiced().nets()
                .forEach((payment, net) -> nets.merge(payment, net, MonetaryAmount::add)));
        return Optional.of(new Invoiced(nets));
    }

    /** The year's price of all sites that are in from the beginning. */
    public MonetaryAmount yearPrice() {
        return Amounts.sum(sites.stream().map(AgreementAtSite::yearPrice).toList(), currency());
    }

    /** The price of the term, or of what a new owner has of it, before changes. */
    public MonetaryAmount termPrice() {
        return Amounts.sum(sites.stream().map(AgreementAtSite::termPrice).toList(), currency());
    }

    /** How the year's price was figured, or where it comes from. */
    public Explanation how() {
        return isOverSeveralSites()
                ? Explanation.of(sites.stream().map(site -> Figure.price(site.yearPrice(), "")).reduce(Figure::plus)
                        .orElseThrow(), Phrase.of("reason.sum-of-sites"))
                : first().how();
    }

    private CurrencyUnit currency() {
        return first().setting().rates().currency();
    }
}
