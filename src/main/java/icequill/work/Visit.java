package icequill.work;

import icequill.problem.Check;
import icequill.problem.Place;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One attendance at a site.
 *
 * @param id the shop's own reference
 * @param serviceCall who bears the charge for coming out
 * @param doneBy of a visit to come: when the site wants all to be done; nothing is left out for it, and where it cannot be kept that is said
 * @param people who were there; nobody where something was sold without a visit
 * @param proposal of a visit that is only planned, and to be quoted
 * @param handover how the machines were left
 * @param terms of its price
 */
public record Visit(String id, String site, Optional<Call> call, PurchaseOrder order, Outcome serviceCall,
        List<Attendance> people, Optional<Sale> sale, Optional<ZonedDateTime> doneBy, List<Finding> findings,
        List<VisitLine> lines,
        PriceTerms terms, Optional<Proposal> proposal, Handover handover, Place place) {

    /** A name that the rates must know, and where it was written. */
    public record Named(String id, Place place) {}

    /**
     * What it says of its own price, each by an id that the rates know.
     *
     * @param flat the scope whose flat prices stand in place of cleaning labor and doses; empty where these are charged
     * @param fees besides those that every visit pays
     * @param surcharges besides those of every visit
     * @param less what is taken off for this once
     * @param route on which it is; empty where it is made by itself
     * @param diagnosis that is taken off it; empty where none is
     * @param blocks that were sold ahead and may pay for it, the oldest first
     */
    public record PriceTerms(Optional<Named> flat, List<Named> fees, List<Named> surcharges,
            Optional<Named> classDiscount, Optional<Named> documentDiscount, List<OneOff.OnClass> less,
            Optional<Route> route, Optional<Diagnosis> diagnosis, List<Block.Held> blocks) {

        /** Nothing but what the rates say of every visit. */
        public static final PriceTerms USUAL = new PriceTerms(Optional.empty(), List.of(), List.of(),
                Optional.empty(), Optional.empty(), List.of(), Optional.empty(), Optional.empty(), List.of());

        public PriceTerms {
            fees = List.copyOf(fees);
            surcharges = List.copyOf(surcharges);
            less = List.copyOf(less);
            blocks = List.copyOf(blocks);
        }

        /** The usual ones, at the flat prices of a scope. */
        public static PriceTerms flat(Named scope) {
            return new PriceTerms(Optional.of(scope), List.of(), List.of(), Optional.empty(), Optional.empty(),
                    List.of(), Optional.empty(), Optional.empty(), List.of());
        }

        private PriceTerms sharing(Route.Shared stop) {
            return new PriceTerms(flat, fees, surcharges, classDiscount, documentDiscount, less,
                    route.map(round -> round.as(stop)), diagnosis, blocks);
        }

        private PriceTerms less(Diagnosis.Charged known) {
            return new PriceTerms(flat, fees, surcharges, classDiscount, documentDiscount, less, route,
                    diagnosis.map(found -> found.as(known)), blocks);
        }

        private PriceTerms paidAhead(List<Block.Held> held) {
            return new PriceTerms(flat, fees, surcharges, classDiscount, documentDiscount, less, route, diagnosis,
                    held);
        }
    }

    /**
     * What the customer is told at the end.
     *
     * @param safeFrom when ice may be served again
     * @param nextDue the day by which the next cleaning is due
     */
    public record Handover(Optional<ZonedDateTime> safeFrom, Optional<LocalDate> nextDue) {

        /** Nothing was said. */
        public static final Handover NONE = new Handover(Optional.empty(), Optional.empty());
    }

    public Visit {
        people = List.copyOf(people);
        findings = List.copyOf(findings);
        lines = List.copyOf(lines);
        Check.that(people.isEmpty() == sale.isPresent(), "neither attended nor sold, or both");
    }

    /** The same with the customer's order for it. */
    public Visit ordered(PurchaseOrder by) {
        return new Visit(id, site, call, by, serviceCall, people, sale, doneBy, findings, lines, terms, proposal,
                handover,
                place);
    }

    /** The same with its part of the charge for coming out on its route. */
    public Visit sharing(Route.Shared stop) {
        return new Visit(id, site, call, order, serviceCall, people, sale, doneBy, findings, lines,
                terms.sharing(stop), proposal, handover, place);
    }

    /** The same with what its diagnosis charged. */
    public Visit less(Diagnosis.Charged known) {
        return new Visit(id, site, call, order, serviceCall, people, sale, doneBy, findings, lines, terms.less(known),
                proposal, handover, place);
    }

    /** The same with what was sold ahead and may pay for it. */
    public Visit paidAhead(List<Block.Held> held) {
        return new Visit(id, site, call, order, serviceCall, people, sale, doneBy, findings, lines,
                terms.paidAhead(held), proposal, handover, place);
    }

    /** The same, so much later. */
    public Visit later(Duration by) {
        return new Visit(id, site, call, order, serviceCall,
                people.stream().map(person -> person.later(by)).toList(), sale, doneBy, findings, lines, terms,
                proposal,
                handover, place);
    }

    /**
     * A day of it: what is done at some machines, by the same people at the same hours some days later. What is used at no machine in
     * particular belongs to the first day.
     */
    public Visit part(int days, List<String> machines) {
        return new Visit(id, site, call, order, serviceCall, people.stream().map(person -> person.onDay(days)).toList(),
                sale, doneBy, findings.stream().filter(finding -> machines.contains(finding.machine())).toList(),
                lines.stream().filter(line -> line.machine().map(machines::contains).orElse(days == 0)).toList(), terms,
                proposal, handover, place);
    }

    /** When the first person arrived; of a sale the beginning of its day. */
    public ZonedDateTime began() {
        return sale.map(Sale::at).orElseGet(
                () -> people.stream().map(Attendance::arrived).min(Comparator.naturalOrder()).orElseThrow());
    }

    /** When the last person left; of a sale the beginning of its day. */
    public ZonedDateTime ended() {
        return sale.map(Sale::at).orElseGet(
                () -> people.stream().map(Attendance::left).max(Comparator.naturalOrder()).orElseThrow());
    }

    /** How many local days somebody came on. */
    public int days() {
        return (int) people.stream().map(person -> person.arrived().toLocalDate()).distinct().count();
    }

    /** The day whose rates hold: the local day on which it began. */
    public LocalDate day() {
        return began().toLocalDate();
    }
}
