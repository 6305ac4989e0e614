package icequill.life.agreement;

import icequill.agreement.GoingOn;
import icequill.agreement.MonthByMonth;
import icequill.agreement.RenewalTerms;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * By what an agreement may be changed and ended.
 *
 * @param start its first day: of its term, or of a new owner who took over the rest of one
 * @param cancelDays of notice within the term, from 0; after it, where it goes on by the month, those of the renewal hold
 * @param changed the first day of the latest change of machines at each site, by the id of the site; without those that never changed
 */
public record AgreementTerms(RenewalTerms renewal, LocalDate start, int cancelDays,
        Map<String, LocalDate> changed) {

    public AgreementTerms {
        changed = Map.copyOf(changed);
    }

    /** The last day of the term; empty where it goes on by the month after it. */
    Optional<LocalDate> termEnd() {
        return isByMonth() ? Optional.empty() : Optional.of(renewal.term().lastDay());
    }

    private boolean isByMonth() {
        return renewal.goingOn() == GoingOn.BY_MONTH;
    }

    /**
     * The first day that may be the last one after a notice: within the term as many days later; of what goes on by the month, where that
     * is after the term, the end of a month that leaves the days of notice.
     *
     * @param received the day of the notice
     */
    public LocalDate earliestEnd(LocalDate received) {
        LocalDate within = received.plusDays(cancelDays);
        return isByMonth() && within.isAfter(renewal.term().lastDay()) ? byMonth(received) : within;
    }

    private LocalDate byMonth(LocalDate received) {
        return new MonthByMonth(renewal.term(), renewal.refuseDays(), Optional.of(received)).lastDay().orElseThrow();
    }

    /** Whether a day of what goes on by the month after its term is the end of one of its months. */
    boolean isMonthsEnd(LocalDate day) {
        return !isByMonth() || !day.isAfter(renewal.term().lastDay())
                || new MonthByMonth(renewal.term(), 0, Optional.of(day)).lastDay().filter(day::equals).isPresent();
    }
}
