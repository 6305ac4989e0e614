package icequill.life.agreement;

import icequill.agreement.GoingOn;
import icequill.agreement.MonthByMonth;
import icequill.agreement.RenewalTerms;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * By what an agreement may be changed and ended.
 *
 * @param start its first day: of its term, or of a new owner who took over the rest of one
 * @param cancelDays of notice within the term, from 0; after it, where it goes on by the month, those of the renewal hold
 * @param byTime whether payments are on days that all of several sites have, and not on those of each one's visits or open months
 * @param sites that it is for, or was, by id
 */
public record AgreementTerms(RenewalTerms renewal, LocalDate start, int cancelDays, boolean byTime,
        Map<String, AtSite> sites) {

    /**
     * One of its sites.
     *
     * @param changed the first day of the latest change that is known of its machines; empty where they never changed
     * @param from on which it comes in, in mid-term; empty where it is in from the beginning
     * @param until its last day, in mid-term; empty where it stays
     */
    public record AtSite(Optional<LocalDate> changed, Optional<LocalDate> from, Optional<LocalDate> until) {

        /** The first day of what is known last of its machines. */
        private Optional<LocalDate> latest() {
            return Stream.of(changed, from).flatMap(Optional::stream).max(LocalDate::compareTo);
        }

        /** Whether it is in on a day, and stays. */
        private boolean stays(LocalDate day) {
            return from.filter(day::isBefore).isEmpty() && until.isEmpty();
        }
    }

    public AgreementTerms {
        sites = Map.copyOf(sites);
    }

    /** The first day of the latest change that is known at a site, by id. */
    Optional<LocalDate> changed(String site) {
        return Optional.ofNullable(sites.get(site)).flatMap(AtSite::latest);
    }

    /** The same of all sites. */
    Optional<LocalDate> changed() {
        return sites.values().stream().flatMap(site -> site.latest().stream()).max(LocalDate::compareTo);
    }

    /** Whether a site is left besides one, by id, on a day and to the end. */
    boolean isLeft(String without, LocalDate day) {
        return sites.entrySet().stream()
                .anyMatch(site -> !site.getKey().equals(without) && site.getValue().stays(day));
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
