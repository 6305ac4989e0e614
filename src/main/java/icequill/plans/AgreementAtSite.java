package icequill.plans;

import icequill.agreement.Billing;
import icequill.agreement.Installment;
import icequill.agreement.Invoiced;
import icequill.agreement.NearestDay;
import icequill.agreement.PaymentChange;
import icequill.agreement.PlannedVisit;
import icequill.agreement.Prepaid;
import icequill.agreement.RenewalPrice;
import icequill.agreement.RestOfTerm;
import icequill.agreement.Tier;
import icequill.agreement.VisitCalendar;
import icequill.document.ServiceAgreement;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.party.Language;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import icequill.request.AgreementRequest.RaiseBy;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * An agreement at one of its sites, read and priced.
 *
 * @param pricing by which its plan and its changes are priced
 * @param plan at its beginning; of a site that comes in later, from the day on which it does
 * @param later the plan with other machines, by the first days of changes
 * @param invoiced payments, as the book has them
 * @param changes each with what it adds to the price
 * @param changed the payments of the term as they are after all changes
 * @param day as of which it is known which months it goes on for
 */
public record AgreementAtSite(PlanSetting setting, TierPricing pricing, AgreementRequest request, PricedPlan plan,
        SortedMap<LocalDate, PricedPlan> later, Invoiced invoiced, List<ServiceAgreement.Change> changes,
        PaymentChange changed, LocalDate day) {

    public AgreementAtSite {
        later = Collections.unmodifiableSortedMap(new TreeMap<>(later));
        changes = List.copyOf(changes);
    }

    private static final SortedMap<LocalDate, PricedPlan> NONE_LATER = Collections.emptySortedMap();

    /**
     * The priced agreement of a site as it begins, or what cannot be priced.
     *
     * @param all its sites, of which this is one
     * @param site its place among them, from 0
     */
    static Validated<AgreementAtSite> begun(PlanSetting setting, Tier tier, TierPricing pricing,
            BiFunction<AgreementRequest, String, Validated<Invoiced>> invoiced, LocalDate day, Beside.Of all,
            int site) {
        AgreementRequest request = all.requests().get(site);
        PlanSetting first = setting.with(all.on(site, request.scope().term().start()));
        return pricing.of(first, tier)
                .map(plan -> request.rest().map(plan::of).orElse(plan)).then(plan -> invoiced
                        .apply(all.requests().getFirst(), request.scope().site())
                        .map(known -> new AgreementAtSite(first, pricing, request, plan, NONE_LATER, known,
                                List.of(), PaymentChange.none(payments(request, plan)), day)));
    }

    /** The same once no more changes follow: with its payments as they were invoiced, and as a notice leaves them that ends it early. */
    AgreementAtSite settled() {
        return (changes.isEmpty() ? this : asInvoiced()).ended();
    }

    private AgreementAtSite asInvoiced() {
        ServiceAgreement.Change last = changes.getLast();
        PaymentChange next = changed.settled(last.price(), invoicedBeforeEnd());
        List<ServiceAgreement.Change> all = new ArrayList<>(changes.subList(0, changes.size() - 1));
        all.add(last.givingBack(next.givenBack()));
        return as(setting, all, next);
    }

    /** The same where a notice ends it early. */
    private AgreementAtSite ended() {
        return request.ended().map(early -> as(setting, changes, changed.ended(early.lastDay(),
                early.at(request.scope().site()), invoiced, payment -> isOwed(payment, early)))).orElse(this);
    }

    /** Whether a payment fell due by the end, or is that of a visit that was done by then, however near its day was. */
    private boolean isOwed(Installment payment, AgreementRequest.Ended early) {
        boolean isDone = invoiced.done().stream().filter(visit -> !visit.isAfter(early.lastDay()))
                .flatMap(visit -> NearestDay.of(changed.payments(), Installment::due, visit).stream())
                .anyMatch(payment::equals);
        return isDone || (!payment.due().isAfter(early.lastDay()) && (request.scope().billing().isPresent()
                || !early.goesOver(request.scope().site(), payment.due())));
    }

    /** The same in another setting, where that changes no price. */
    AgreementAtSite in(PlanSetting now) {
        return as(now, changes, changed);
    }

    /** The same on the plan on which its site comes in, later than the others. */
    AgreementAtSite on(PlanSetting now, PricedPlan coming) {
        return new AgreementAtSite(now, pricing, request, coming, later, invoiced, changes, changed, day);
    }

    /** The same with one more change, which the payments carry that are still to come. */
    AgreementAtSite with(PlanSetting now, ServiceAgreement.Change change) {
        PaymentChange next = PaymentChange.of(change.price(), changed, invoicedBeforeEnd());
        List<ServiceAgreement.Change> all = new ArrayList<>(changes);
        all.add(change.givingBack(next.givenBack()));
        return as(now, all, next);
    }

    private AgreementAtSite as(PlanSetting now, List<ServiceAgreement.Change> all, PaymentChange next) {
        return new AgreementAtSite(now, pricing, request, plan, later, invoiced, all, next, day);
    }

    /** The same with another plan from a day on. */
    AgreementAtSite from(LocalDate first, PricedPlan other) {
        SortedMap<LocalDate, PricedPlan> more = new TreeMap<>(later);
        more.put(first, other);
        return new AgreementAtSite(setting, pricing, request, plan, more, invoiced, changes, changed, day);
    }

    private Invoiced invoicedBeforeEnd() {
        return request.ended().map(early -> early.at(request.scope().site()).without(invoiced))
                .orElse(invoiced);
    }

    private static List<Installment> payments(AgreementRequest request, PricedPlan plan) {
        return request.rest().map(plan::payments).orElseGet(() -> plan.payments(yearPrice(request, plan)));
    }

    private static MonetaryAmount yearPrice(AgreementRequest request, PricedPlan plan) {
        MonetaryAmount price = agreedPrice(request).orElse(plan.year().price());
        return comesLater(request) ? price.multiply(0) : price;
    }

    private static Optional<MonetaryAmount> agreedPrice(AgreementRequest request) {
        return request.agreed().map(AgreementRequest.Agreed::price);
    }

    private static boolean comesLater(AgreementRequest request) {
        return request.part().flatMap(AgreementRequest.Part::from).isPresent();
    }

    /** What is paid ahead, with the visits that are due by a day taken for done. */
    public Prepaid prepaid(LocalDate done) {
        return prepaid(visit -> !visit.date().isAfter(done));
    }

    /** The same with the visits that were done. */
    Prepaid prepaid(Predicate<PlannedVisit> done) {
        List<Prepaid.Part> parts = new ArrayList<>();
        parts.add(new Prepaid.Part(termPrice(), request.firstDay()));
        changes.forEach(change -> parts.add(new Prepaid.Part(change.price().amount(), change.price().from())));
        return new Prepaid(plan.term(), parts, plan.visits().stream().filter(slot -> isDue(slot.visit()))
                .map(slot -> new Prepaid.VisitShare(slot.visit().date(), slot.priced().net(),
                        done.test(slot.visit())))
                .toList());
    }

    /** Whether the site is part of the agreement on the day of a visit, however the agreement ends. */
    private boolean isDue(PlannedVisit visit) {
        return request.ended().filter(early -> early.goesOver(request.scope().site(), visit.date())).isEmpty()
                && request.isHere(visit.date());
    }

    /** The visits of the term that fall into the days on which the site is part of the agreement. */
    public VisitCalendar calendar() {
        return new VisitCalendar(plan.calendar().visits().stream().filter(this::isDue)
                .filter(visit -> !request.isPastEnd(visit.date())).toList(),
                plan.calendar().leftOut());
    }

    /**
     * The visits of the term, and of the months after it that begin by a day, while the agreement is in force at the site, each with the
     * machines and the crew of its day.
     */
    public List<CalendarVisit> visitsUntil(LocalDate last) {
        return VisitCalendar
                .of(request.termUntil(last), plan.tier(), setting.whole().season(), setting.rates().plans().filters())
                .visits().stream().flatMap(visit -> request.due(visit).stream())
                .filter(visit -> request.isInForce(visit.date()))
                .map(visit -> new CalendarVisit(visit, request.machines(setting.whole(), visit.date()),
                        on(visit.date()).crew(visit)))
                .toList();
    }

    private PricedPlan on(LocalDate visit) {
        SortedMap<LocalDate, PricedPlan> before = later.headMap(visit.plusDays(1));
        return before.isEmpty() ? plan : before.lastEntry().getValue();
    }

    /** Whether the site is still part of the agreement at the end of the term. */
    public boolean isInAtTheEnd() {
        return request.lastDayHere().isEmpty();
    }

    /** Those of the term, as they are after all changes, and those of months after it up to the next one. */
    public List<Installment> payments() {
        return Stream.concat(termPayments().stream(), request.byMonth().stream()
                .flatMap(months -> months.payments(day.plusMonths(1), goingOnPrice().price(), paidMonths()).stream())
                .filter(payment -> !request.isPastEnd(payment.due()))).toList();
    }

    /** The first twelve months after the term for a year's price; empty where it does not go on by the month. */
    List<Installment> monthsFrom(MonetaryAmount price) {
        return request.byMonth().map(months -> months.payments(months.term().renewal().plusYears(1).minusDays(1),
                price, paidMonths())).orElse(List.of());
    }

    private Set<Month> paidMonths() {
        return request.scope().billing().filter(Billing.OPEN_MONTHS::equals).isPresent()
                ? setting.site().season()
                : Set.of();
    }

    /** As they are after all changes. */
    public List<Installment> termPayments() {
        return changed.payments();
    }

    /** A year's price while it goes on by the month. */
    RenewalPrice goingOnPrice() {
        return request.renewal().raise().filter(RaiseBy.Given.class::isInstance).map(RaiseBy.Given.class::cast)
                .map(given -> RenewalPrice.of(currentYearPrice(), given.raise(), plan.tier().step(), plan.tier().cap()))
                .orElseGet(() -> RenewalPrice.unchanged(currentYearPrice()));
    }

    public MonetaryAmount yearPrice() {
        return yearPrice(request, plan);
    }

    /** The price of its term, or of what a new owner has of it, before changes. */
    public MonetaryAmount termPrice() {
        return request.rest().map(RestOfTerm::price).orElseGet(() -> plan.termPrice(yearPrice()));
    }

    /** The same with all changes. */
    public MonetaryAmount wholePrice() {
        return changes.stream().map(change -> change.price().amount()).reduce(termPrice(), MonetaryAmount::add);
    }

    /** The year's price, or of a site that comes in later what it is from then on. */
    public MonetaryAmount plannedYearPrice() {
        return agreedPrice(request).orElse(plan.year().price());
    }

    /** A year's price with the machines as they are after all changes. */
    public MonetaryAmount currentYearPrice() {
        return changes.stream().map(ServiceAgreement.Change::yearDifference).reduce(yearPrice(), MonetaryAmount::add);
    }

    /** How the year's price was figured, or where it comes from. */
    public Explanation how() {
        return request.agreed().map(agreed -> Explanation.of(Figure.price(agreed.price(), ""),
                Phrase.of("reason.agreed-price", new Fact.Text(agreed.from())))).orElse(plan.year().how());
    }

    public Language language(Optional<Language> wanted) {
        return wanted.or(() -> setting.site().customer().language()).orElse(setting.shop().language());
    }
}
