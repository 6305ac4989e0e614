package icequill.answer.today;

import icequill.answer.call.CallRow;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;

/**
 * What waits for somebody on a day, the oldest first.
 *
 * @param late visits that were planned for before the day and are neither recorded as done nor withdrawn
 * @param planned visits from the day on, for a week
 * @param unbilled visits that are done and have no invoice that stands
 * @param calls to which nobody went yet
 * @param lapsing quotes whose last day is within a week
 * @param claims that are to be sent, or what failed returned, within a week or since
 * @param mails that wait for somebody
 */
public record DayAnswer(LocalDate day, List<Attendance> late, List<Attendance> planned, List<Attendance> unbilled,
        List<CallRow> calls, List<LapsingQuote> lapsing, List<DueClaim> claims, Mails mails) {

    /**
     * A visit.
     *
     * @param visit by id
     * @param site by id
     * @param people who come or came
     */
    public record Attendance(String visit, String site, String siteName, ZonedDateTime began, ZonedDateTime ended,
            List<String> people) {

        public Attendance {
            people = List.copyOf(people);
        }
    }

    /**
     * A quote.
     *
     * @param where customer, store and address
     * @param validUntil its last day
     */
    public record LapsingQuote(String number, String where, LocalDate validUntil) {}

    /**
     * A claim for work under a warranty.
     *
     * @param claim by id
     * @param by which day something is to be done
     */
    public record DueClaim(String claim, String siteName, LocalDate by) {}

    /**
     * How many mails there are to do something about.
     *
     * @param toLookAfter refused, returned, or of which nobody knows whether they went out
     * @param waiting to be sent
     */
    public record Mails(int toLookAfter, int waiting) {

        /** None at all. */
        public static final Mails NONE = new Mails(0, 0);
    }

    public DayAnswer {
        late = List.copyOf(late);
        planned = List.copyOf(planned);
        unbilled = List.copyOf(unbilled);
        calls = List.copyOf(calls);
        lapsing = List.copyOf(lapsing);
        claims = List.copyOf(claims);
    }

    /** Whether nothing waits. */
    public boolean isFree() {
        return late.isEmpty() && planned.isEmpty() && unbilled.isEmpty() && calls.isEmpty() && lapsing.isEmpty()
                && claims.isEmpty() && mails.equals(Mails.NONE);
    }
}
