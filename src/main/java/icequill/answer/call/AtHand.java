package icequill.answer.call;

import icequill.answer.history.VisitRow;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What is at hand of a site while somebody of it is on the telephone.
 *
 * @param site by id
 * @param customer who pays, by id
 * @param at the moment of the call
 * @param callers who is known there, by name
 * @param machines at the site
 * @param agreements that are in force there
 * @param lastVisits the newest first
 * @param waiting calls of the site to which nobody went yet, the newest first
 * @param repairs that were recommended there and are not done, the oldest first
 * @param hold what the customer owes that is past due; empty where that is nothing
 * @param approver who allows more than an order, by name and telephone
 * @param notices what of this could not be worked out
 */
public record AtHand(String site, String siteName, String customer, String customerName, ZonedDateTime at,
        List<String> callers, List<MachineAtHand> machines, List<Promise> agreements, List<VisitRow> lastVisits,
        List<CallRow> waiting, List<RepairAtHand> repairs, Optional<Hold> hold, Optional<String> approver,
        List<Problem> notices) {

    /** A machine, by id, and where it stands. */
    public record MachineAtHand(String id, String name) {}

    /**
     * A repair that a visit recommended.
     *
     * @param machine by id
     * @param accepted whether the customer said yes then
     */
    public record RepairAtHand(LocalDate day, String machine, String recommended, boolean accepted) {}

    /**
     * An agreement in force, by its number.
     *
     * @param plan what it is on
     * @param band in which the call is made
     * @param hours within which somebody comes; empty where nothing is promised for such hours
     * @param by when that is
     * @param calls how many it includes in a year of its term; empty where it includes none
     * @param callsLeft of them
     */
    public record Promise(String agreement, String plan, Optional<String> band, Optional<Integer> hours,
            Optional<ZonedDateTime> by, Optional<Integer> calls, Optional<Integer> callsLeft) {}

    /**
     * Why to ask before anybody goes there.
     *
     * @param pastDue what is open and past due
     * @param invoices how many that is
     * @param since the day on which the oldest was due
     */
    public record Hold(MonetaryAmount pastDue, int invoices, LocalDate since) {}

    public AtHand {
        callers = List.copyOf(callers);
        machines = List.copyOf(machines);
        agreements = List.copyOf(agreements);
        lastVisits = List.copyOf(lastVisits);
        waiting = List.copyOf(waiting);
        repairs = List.copyOf(repairs);
        notices = List.copyOf(notices);
    }
}
