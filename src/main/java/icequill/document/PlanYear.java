package icequill.document;

import icequill.agreement.PlannedVisit;
import icequill.agreement.Tier;
import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.party.Wording;
import icequill.planner.Timetable;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A year on a maintenance plan, as its customer sees it.
 *
 * @param visits of the year, those that are alike put together, by the day of the first
 * @param list all visits by themselves
 * @param discount off them; positive
 * @param discountLabel what the line of the discount says; empty where it is the tier's own
 * @param reserve for included calls
 * @param price list less discount, plus reserve, to the plan's price step
 */
public record PlanYear(Tier tier, List<SlotWork> visits, MonetaryAmount list, MonetaryAmount discount,
        Optional<Phrase> discountLabel,
        MonetaryAmount reserve, MonetaryAmount price, Explanation how) {

    /** Where the planned minutes of a visit come from. */
    public enum MinutesFrom {
        /** The shop said so. */
        ESTIMATE,
        /** A timetable that was proven to be the shortest. */
        SHORTEST_TIMETABLE,
        /** A timetable than which there may be a shorter one. */
        TIMETABLE,
        /** All tasks' minutes, machine after machine. */
        SUM
    }

    /**
     * Visits on which the same is done, at the same price.
     *
     * @param people who come
     * @param minutes each of them is there
     * @param from where the minutes come from
     * @param timetable by which they were found; empty where they come from elsewhere
     * @param arrival the hour that it is planned and priced for
     * @param net of one visit, at list
     */
    public record SlotWork(List<PlannedVisit> visits, int people, int minutes, MinutesFrom from,
            Optional<Timetable> timetable, LocalTime arrival, List<MachineWork> machines, List<InvoiceLine> lines,
            MonetaryAmount net) {
        public SlotWork {
            visits = List.copyOf(visits);
            machines = List.copyOf(machines);
            lines = List.copyOf(lines);
        }

        /** By how many minutes the visit, and with it the price, may be too long; 0 where that cannot be said. */
        public int perhapsTooLong() {
            return timetable.map(Timetable::gap).orElse(0);
        }
    }

    /**
     * What is done at one machine.
     *
     * @param where it stands
     * @param withoutIce minutes in which it makes none
     */
    public record MachineWork(String where, List<Wording> tasks, int withoutIce) {
        public MachineWork {
            tasks = List.copyOf(tasks);
        }
    }

    public PlanYear {
        visits = List.copyOf(visits);
    }
}
