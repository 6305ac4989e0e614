package icequill.request;

import icequill.agreement.Acceptance;
import icequill.agreement.GoingOn;
import icequill.agreement.MonthByMonth;
import icequill.agreement.PaymentChange;
import icequill.agreement.PlannedVisit;
import icequill.agreement.Raise;
import icequill.agreement.RenewalTerms;
import icequill.agreement.RestOfTerm;
import icequill.agreement.Term;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * An agreement as the shop has it on file.
 *
 * @param number of the agreement
 * @param tier by id
 * @param priced the day whose rates it was priced by, and by which later changes are priced
 * @param accepted empty while it is only drafted
 * @param agreed a year's price that was agreed on as it stands, such as that of a renewal; empty where the rates give it
 * @param cancelDays of notice by which the customer may end it within the term
 * @param changes in mid-term, by rising day
 * @param orders that stand for all that the agreement bills
 * @param part present where this is one of several sites
 * @param further the other sites of it; each has none itself
 * @param ended present where somebody ends it before it would end by itself
 * @param rest present where it is the rest of another one at this site, which a new owner took over
 */
public record AgreementRequest(String number, PlanScope scope, Visit.Named tier, LocalDate priced,
        Optional<Acceptance> accepted, Optional<Agreed> agreed, int cancelDays, Renewal renewal, List<Change> changes,
        StandingOrders orders, Optional<Part> part, List<AgreementRequest> further, Optional<Ended> ended,
        Optional<RestOfTerm> rest) {

    /**
     * How it ends early.
     *
     * @param givenBack of which payments, by the id of the site; empty where nothing goes back
     * @param goingOver the days of the first visits of its calendar that go over to a new owner, by the id of the site
     */
    public record Ended(LocalDate lastDay, Map<String, PaymentChange.Back> givenBack,
            Map<String, LocalDate> goingOver) {
        public Ended {
            givenBack = Map.copyOf(givenBack);
            goingOver = Map.copyOf(goingOver);
        }

        public Ended(LocalDate lastDay, Map<String, PaymentChange.Back> givenBack) {
            this(lastDay, givenBack, Map.of());
        }

        /** The numbers of the payments of which something goes back by credit notes. */
        public Set<Integer> credited() {
            return givenBack.values().stream().flatMap(back -> back.credited().stream())
                    .map(PaymentChange.GivenBack::payment).collect(Collectors.toSet());
        }

        /** Whether a visit of the calendar that is due on a day goes over to a new owner. */
        public boolean goesOver(String site, LocalDate visit) {
            return Optional.ofNullable(goingOver.get(site)).filter(first -> !visit.isBefore(first)).isPresent();
        }

        /** What goes back at a site. */
        public PaymentChange.Back at(String site) {
            return givenBack.getOrDefault(site, PaymentChange.Back.NOTHING);
        }
    }

    /**
     * One of several sites.
     *
     * @param from the day on which it comes in, in mid-term; empty where it is in from the beginning
     * @param until its last day, in mid-term; empty where it stays
     */
    public record Part(Optional<LocalDate> from, Optional<LocalDate> until) {

        /** In from the beginning, to the end. */
        private static final Part WHOLE = new Part(Optional.empty(), Optional.empty());

        public boolean contains(LocalDate day) {
            return from.filter(day::isBefore).isEmpty() && until.filter(day::isAfter).isEmpty();
        }
    }

    /**
     * A year's price that no rates give.
     *
     * @param from where it comes from, as in "renewal of A-2025-004"
     */
    public record Agreed(MonetaryAmount price, String from) {}

    /**
     * How it goes on after its term.
     *
     * @param jurisdictions by ISO 3166, whose laws about notices are looked up; never empty
     * @param raise empty where the price of the renewal is not settled, or stays where it goes on by the month
     * @param noticed when it goes on by the month: the day on which notice was given
     */
    public record Renewal(RenewalTerms terms, List<String> jurisdictions, Optional<RaiseBy> raise,
            Optional<LocalDate> noticed) {
        public Renewal {
            jurisdictions = List.copyOf(jurisdictions);
        }
    }

    /** How the price of the renewal is to come about. */
    public sealed interface RaiseBy {

        /** From the old price. */
        record Given(Raise raise) implements RaiseBy {}

        /** Priced anew by the rates of the first day of the renewal. */
        record Repricing() implements RaiseBy {}
    }

    /**
     * Machines added or removed in mid-term.
     *
     * @param from the first day of the change
     * @param minutes at the site with the machines as they are then, by the id of the scope; what is not given is planned
     * @param place of the minutes
     */
    public record Change(LocalDate from, List<Visit.Named> added, List<Visit.Named> removed,
            Map<String, Integer> minutes, Place place) {
        public Change {
            added = List.copyOf(added);
            removed = List.copyOf(removed);
            minutes = Map.copyOf(minutes);
        }
    }

    public AgreementRequest {
        changes = List.copyOf(changes);
        further = List.copyOf(further);
    }

    /** The same as somebody ended it. */
    public AgreementRequest ending(Ended early) {
        return new AgreementRequest(number, scope, tier, priced, accepted, agreed, cancelDays, renewal, changes,
                orders, part, further.stream().map(site -> site.ending(early)).toList(), Optional.of(early), rest);
    }

    /** The same with one more change at one of its sites, after all that are known there. */
    public AgreementRequest changing(String site, Change change) {
        boolean isHere = scope.site().equals(site);
        return new AgreementRequest(number, scope, tier, priced, accepted, agreed, cancelDays, renewal,
                isHere ? Stream.concat(changes.stream(), Stream.of(change)).toList() : changes, orders, part,
                further.stream().map(other -> other.changing(site, change)).toList(), ended, rest);
    }

    /**
     * The same with one more site; what is known of one that it is for already, since it was written anew, stays.
     *
     * @param first its first day there
     * @param machines that are looked after; empty for all
     */
    public AgreementRequest adding(String site, LocalDate first, List<Visit.Named> machines) {
        if (sites().stream().anyMatch(known -> known.scope().site().equals(site))) {
            return this;
        }
        AgreementRequest added = new AgreementRequest(number, scope.at(site, machines), tier, priced, accepted,
                Optional.empty(), cancelDays, renewal, List.of(), orders,
                Optional.of(new Part(Optional.of(first), Optional.empty())), List.of(), ended,
                rest.map(taken -> taken.coming(first)));
        return with(Optional.of(part.orElse(Part.WHOLE)), Stream.concat(further.stream(), Stream.of(added)).toList());
    }

    /** The same without one of its several sites, after its last day. */
    public AgreementRequest removing(String site, LocalDate last) {
        return with(scope.site().equals(site)
                ? Optional.of(new Part(part.flatMap(Part::from), Optional.of(last)))
                : part, further.stream().map(other -> other.removing(site, last)).toList());
    }

    private AgreementRequest with(Optional<Part> own, List<AgreementRequest> others) {
        return new AgreementRequest(number, scope, tier, priced, accepted, agreed, cancelDays, renewal, changes,
                orders, own, others, ended, rest);
    }

    /** The same with another standing purchase order. */
    public AgreementRequest ordering(StandingOrders.From order) {
        return new AgreementRequest(number, scope, tier, priced, accepted, agreed, cancelDays, renewal, changes,
                orders.and(order), part, further.stream().map(other -> other.ordering(order)).toList(), ended,
                rest);
    }

    /** Its first day: of its term, or of a new owner who took over the rest of one. */
    public LocalDate firstDay() {
        return rest.map(RestOfTerm::from).orElse(scope.term().start());
    }

    /** The first day of its site, which may come in later. */
    public LocalDate firstDayHere() {
        return part.flatMap(Part::from).orElseGet(this::firstDay);
    }

    /** The last day of its site, where that goes out in mid-term. */
    public Optional<LocalDate> lastDayHere() {
        return part.flatMap(Part::until);
    }

    /**
     * The first day of a visit that may be one of its calendar: a month ahead of its term, but none of a former owner's, or of before its
     * site came in.
     */
    public LocalDate firstVisitDay() {
        return firstDayHere().equals(scope.term().start()) ? scope.term().start().minusMonths(1) : firstDayHere();
    }

    /** A visit of its term's calendar as it is due by it; empty where that belongs to a former owner, or goes over to a new one. */
    public Optional<PlannedVisit> due(PlannedVisit whole) {
        return ended.filter(early -> early.goesOver(scope.site(), whole.date())).isPresent()
                ? Optional.empty()
                : rest.map(taken -> taken.due(whole)).orElseGet(() -> Optional.of(whole));
    }

    /** Whether a day is after its last one, where somebody ended it early. */
    public boolean isPastEnd(LocalDate day) {
        return ended.filter(early -> day.isAfter(early.lastDay())).isPresent();
    }

    /** Its sites one by one, this one first. */
    public List<AgreementRequest> sites() {
        return Stream.concat(Stream.of(this), further.stream()).toList();
    }

    /** The machines of its site that are looked after on a day, by id; none while the site is not part of it. */
    public Set<String> machines(Site site, LocalDate day) {
        if (!isPart(day)) {
            return Set.of();
        }
        Set<String> ids = new LinkedHashSet<>(scope.machines().isEmpty()
                ? site.machines().stream().map(Machine::id).toList()
                : scope.machines().stream().map(Visit.Named::id).toList());
        changes.stream().filter(change -> !change.from().isAfter(day)).forEach(change -> {
            change.added().forEach(machine -> ids.add(machine.id()));
            change.removed().forEach(machine -> ids.remove(machine.id()));
        });
        return ids;
    }

    /** How it goes on by the month; empty where it does not. */
    public Optional<MonthByMonth> byMonth() {
        return renewal.terms().goingOn() == GoingOn.BY_MONTH
                ? Optional.of(new MonthByMonth(scope.term(), renewal.terms().refuseDays(), renewal.noticed()))
                : Optional.empty();
    }

    /** The day of the notice by which it ends with its term; empty where it goes on. */
    public Optional<LocalDate> endingNotice() {
        LocalDate last = renewal.terms().term().lastDay();
        return renewal.noticed()
                .filter(day -> byMonth().flatMap(MonthByMonth::lastDay).filter(last::equals).isPresent());
    }

    /** Whether it was accepted by a day of its term, or of the months that it goes on for. */
    public boolean isInForce(LocalDate day) {
        return accepted.filter(found -> !found.date().isAfter(day)).isPresent()
                && isPart(day)
                && (scope.term().contains(day) || byMonth().filter(months -> months.contains(day)).isPresent());
    }

    /** Whether its site has come in by a day, and not gone out again. */
    public boolean isHere(LocalDate day) {
        return part.filter(known -> !known.contains(day)).isEmpty();
    }

    /** The same, and it has begun and not ended by then. */
    private boolean isPart(LocalDate day) {
        return isHere(day) && !isPastEnd(day)
                && rest.filter(taken -> day.isBefore(taken.from())).isEmpty();
    }

    /** The term, with the months after it that begin by a day. */
    public Term termUntil(LocalDate day) {
        LocalDate last = ended.map(Ended::lastDay).filter(day::isAfter).orElse(day);
        return byMonth().map(months -> months.until(last)).orElse(scope.term());
    }
}
