package icequill.plans;

import icequill.agreement.Installment;
import icequill.agreement.NearestDay;
import icequill.agreement.PlannedVisit;
import icequill.agreement.Term;
import icequill.agreement.VisitCalendar;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * An agreement at one of its sites, and the term for which it is renewed.
 *
 * @param done days on which visits of the calendar were done so far
 */
public record NextTerm(AgreementAtSite site, List<LocalDate> done) {

    public NextTerm {
        done = List.copyOf(done);
    }

    /**
     * The first day on which a visit may be one of the next term: within the last month before it, if nearer to its first visit than to the last
     * one of this term; and after a visit by which that last one is billed already. Empty where either term has no visits.
     */
    public Optional<LocalDate> firstDay() {
        Term next = site.request().renewal().terms().next();
        List<PlannedVisit> visits = site.calendar().visits();
        List<PlannedVisit> after = VisitCalendar.of(next, site.plan().tier(), site.setting().whole().season(),
                site.setting().rates().plans().filters()).visits();
        if (visits.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        LocalDate last = visits.getLast().date();
        LocalDate nearer = last.plusDays(ChronoUnit.DAYS.between(last, after.getFirst().date()) / 2 + 1);
        LocalDate month = next.start().minusMonths(1);
        LocalDate first = nearer.isAfter(month) ? nearer : month;
        return Optional.of(billed(last, first).map(visit -> visit.plusDays(1)).orElse(first));
    }

    /** The visit by which the last one of the term was billed, where only one from a day on can be that. */
    private Optional<LocalDate> billed(LocalDate last, LocalDate day) {
        List<Installment> payments = site.changed().payments();
        Predicate<LocalDate> isLast = visit -> NearestDay.of(payments, Installment::due, visit)
                .filter(payment -> payment.due().equals(last)).isPresent();
        boolean isBilled = site.request().scope().billing().isEmpty() && payments.stream()
                .anyMatch(payment -> payment.due().equals(last)
                        && site.invoiced().nets().containsKey(payment.number()));
        return isBilled && done.stream().filter(visit -> visit.isBefore(day)).noneMatch(isLast)
                ? done.stream().filter(visit -> !visit.isBefore(day)).filter(isLast).min(LocalDate::compareTo)
                : Optional.empty();
    }
}
