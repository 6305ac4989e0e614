package icequill.plans;

import icequill.agreement.Installment;
import icequill.agreement.Installments;
import icequill.agreement.PlannedVisit;
import icequill.agreement.RestOfTerm;
import icequill.agreement.Term;
import icequill.agreement.Tier;
import icequill.agreement.VisitCalendar;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Wording;
import icequill.pricer.AgreementPricer;
import icequill.pricer.CallReserve;
import icequill.pricer.PricedAgreement;
import icequill.pricer.PricedSlot;
import icequill.pricer.StaffedVisit;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.PlanScope;
import icequill.work.Unit;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/**
 * A plan for a site with its price.
 *
 * @param calendar of the whole term, or of what a new owner has of it
 * @param crews of all visits of the term, in their order
 * @param year the price of a year, by the visits of the first
 * @param visits those of the calendar, each by itself at list
 */
public record PricedPlan(PlanSetting setting, Tier tier, VisitCalendar calendar, List<TimedVisit> crews,
        PricedAgreement year,
        List<PricedSlot> visits) {

    private static final int YEAR = 12;

    /** Prices a tier for a site, or says what is in the way. */
    static Validated<PricedPlan> of(PlanSetting setting, Tier tier) {
        PlanScope scope = setting.scope();
        VisitCalendar calendar = VisitCalendar.of(scope.term(), tier, setting.site().season(),
                setting.rates().plans().filters());
        if (calendar.firstYear().isEmpty()) {
            return Validated
                    .invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile("sites/" + setting.site().id() + ".yaml"),
                            "the site is closed whenever the tier \"" + tier.id() + "\" has a visit in the first year",
                            "a season with a month in which somebody can come"));
        }
        return new PlannedMinutes(setting).timed(calendar.visits())
                .then(visits -> priced(setting, tier, calendar, visits));
    }

    private static Validated<PricedPlan> priced(PlanSetting setting, Tier tier, VisitCalendar calendar,
            List<TimedVisit> crews) {
        List<StaffedVisit> visits = crews.stream().map(TimedVisit::staffed).toList();
        List<StaffedVisit> first = visits.subList(0, calendar.firstYear().size());
        return price(setting, tier, first)
                .then(year -> (visits.size() == first.size() ? Validated.valid(year) : price(setting, tier, visits))
                        .map(whole -> new PricedPlan(setting, tier, calendar, crews, year,
                                whole.slots())));
    }

    private static Validated<PricedAgreement> price(PlanSetting setting, Tier tier, List<StaffedVisit> visits) {
        return AgreementPricer.price(tier, setting.reach(), visits, setting.scope().reserve(), setting.site(),
                setting.rates(),
                setting.shop().zone());
    }

    /** The same with those visits alone that a new owner has of the term, on the days on which they are due to him. */
    PricedPlan of(RestOfTerm rest) {
        return new PricedPlan(setting, tier,
                new VisitCalendar(calendar.visits().stream().flatMap(visit -> rest.due(visit).stream()).toList(),
                        List.of()),
                crews, year,
                visits.stream().flatMap(slot -> rest.due(slot.visit()).map(due -> new PricedSlot(due, slot.priced(),
                        slot.arrival(), slot.remarks())).stream()).toList());
    }

    /** The same with what its included calls are expected to cost. */
    PricedPlan with(CallReserve calls) {
        return new PricedPlan(setting, tier, calendar, crews, AgreementPricer.with(year, calls), visits);
    }

    /** The crew of a visit and its minutes, by the visit's place in the calendar. */
    public StaffedVisit staffedVisit(int visit) {
        return crews.get(visit).staffed();
    }

    /** Who comes on visits like one, and for how long; nobody where the term has none like it. */
    List<StaffedVisit.Person> crew(PlannedVisit like) {
        return crews.stream().map(TimedVisit::staffed)
                .filter(crew -> crew.visit().slot().scope().id().equals(like.slot().scope().id()))
                .min(Comparator.comparing(crew -> crew.visit().filtersDue() != like.filtersDue()))
                .map(StaffedVisit::crew).orElse(List.of());
    }

    /** That a timetable is not proven to be the shortest, so that the price may be too high: once for each kind of visit. */
    public List<Phrase> unproven() {
        Map<Wording, Integer> most = new LinkedHashMap<>();
        crews.stream().filter(crew -> crew.perhapsTooLong() > 0).forEach(
                crew -> most.merge(crew.staffed().visit().slot().scope().name(), crew.perhapsTooLong(), Math::max));
        return most.entrySet().stream().map(entry -> Phrase.of("mine.not-proven",
                entry.getKey().named(),
                Fact.number(entry.getValue(), Unit.MINUTE.symbol()))).toList();
    }

    public Term term() {
        return setting.scope().term();
    }

    /** A year's price for every year of the term; a term of months has one price, that of what is done in them. */
    public MonetaryAmount termPrice(MonetaryAmount yearPrice) {
        return yearPrice.multiply(Math.max(1, term().months() / YEAR));
    }

    /** The payments of the whole term for a year's price. */
    List<Installment> payments(MonetaryAmount yearPrice) {
        MonetaryAmount price = termPrice(yearPrice);
        return setting.scope().billing()
                .map(billing -> Installments.of(term(), price, billing, setting.site().season()))
                .orElseGet(() -> perVisit(price));
    }

    /** The payments of what a new owner has of the term. */
    List<Installment> payments(RestOfTerm rest) {
        return setting.scope().billing()
                .map(billing -> Installments.rest(rest, term(), billing, setting.site().season()))
                .orElseGet(() -> perVisit(rest.price()));
    }

    private List<Installment> perVisit(MonetaryAmount price) {
        return Installments.perVisit(calendar.visits(), visits.stream().map(slot -> slot.priced().net()).toList(),
                price);
    }

    /** Those of the first year. */
    List<Installment> firstPayments() {
        return payments(year.price()).stream()
                .filter(payment -> payment.due().isBefore(term().start().plusMonths(YEAR))).toList();
    }
}
