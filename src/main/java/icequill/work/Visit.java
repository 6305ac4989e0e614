package icequill.work;

import icequill.problem.Check;
import icequill.problem.Place;
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
 * @param proposal of a visit that is only planned, and to be quoted
 * @param handover how the machines were left
 * @param surcharges and {@code classDiscount}, {@code documentDiscount}: by id, as the rates name them
 */
public record Visit(String id, String site, Optional<Call> call, PurchaseOrder order, Outcome serviceCall,
        List<Attendance> people, List<Finding> findings, List<VisitLine> lines, List<Named> surcharges,
        Optional<Named> classDiscount, Optional<Named> documentDiscount, Optional<Proposal> proposal,
        Handover handover, Place place) {

    /** A name that the rates must know, and where it was written. */
    public record Named(String id, Place place) {}

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
        surcharges = List.copyOf(surcharges);
        Check.that(!people.isEmpty(), "nobody attended");
    }

    /** The same with the customer's order for it. */
    public Visit ordered(PurchaseOrder by) {
        return new Visit(id, site, call, by, serviceCall, people, findings, lines, surcharges, classDiscount,
                documentDiscount, proposal, handover, place);
    }

    /** When the first person arrived. */
    public ZonedDateTime began() {
        return people.stream().map(Attendance::arrived).min(Comparator.naturalOrder()).orElseThrow();
    }

    /** When the last person left. */
    public ZonedDateTime ended() {
        return people.stream().map(Attendance::left).max(Comparator.naturalOrder()).orElseThrow();
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
