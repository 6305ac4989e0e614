package icequill.answer.days;

import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Days proposed for the visits that are due: spread over the working days of the persons, by the shop's hours and holidays, the hours, months
 * and days of the week in which sites let somebody in, the minutes that were planned, and the way. Of the way only the miles from the shop and the
 * postal code are known: sites of one code are taken to lie on one road, the way between others is counted over the shop.
 *
 * @param from the first day that is proposed
 * @param until visits are due up to this day
 * @param people by name, for whom days are proposed
 * @param left visits for which no day is proposed
 * @param driving minutes of all persons, to visits that were planned before too
 * @param isBest whether it is known that nothing better can be found, by the weights of early and late days against driving
 * @param problems of agreements whose visits could not be worked out
 */
public record DayProposals(LocalDate from, LocalDate until, List<String> people, List<Proposal> visits,
        List<Unplaced> left, int driving, boolean isBest, List<Problem> problems) {

    /**
     * Somebody who goes to a visit.
     *
     * @param minutes that he is at the site
     */
    public record Going(String person, int minutes) {}

    /**
     * A visit with its day.
     *
     * @param key by which it is told from all others: agreement, site and due day
     * @param agreement by number
     * @param site by id
     * @param what is done, in the language of the reader
     * @param begins such as 09:15
     * @param ends such as 11:00
     * @param going who goes, and for how long
     * @param reasons for the day, in the language of the reader
     * @param visit under which it was stored, by id; empty while it is only proposed
     */
    public record Proposal(String key, String agreement, String site, String siteName, LocalDate due, String what,
            LocalDate day, String begins, String ends, int minutes, List<Going> going, List<String> reasons,
            Optional<String> visit) {

        public Proposal {
            going = List.copyOf(going);
            reasons = List.copyOf(reasons);
        }

        /** The same, stored. */
        Proposal stored(String id) {
            return new Proposal(key, agreement, site, siteName, due, what, day, begins, ends, minutes, going, reasons,
                    Optional.of(id));
        }
    }

    /**
     * A visit without a day.
     *
     * @param why in the language of the reader
     */
    public record Unplaced(String agreement, String site, String siteName, LocalDate due, String what, String why) {}

    public DayProposals {
        people = List.copyOf(people);
        visits = List.copyOf(visits);
        left = List.copyOf(left);
        problems = List.copyOf(problems);
    }

    /** The same with its visits stored under ids, in their order. */
    DayProposals stored(List<String> ids) {
        return new DayProposals(from, until, people,
                IntStream.range(0, visits.size()).mapToObj(i -> visits.get(i).stored(ids.get(i))).toList(), left,
                driving, isBest, problems);
    }
}
