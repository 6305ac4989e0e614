package icequill.plans;

import icequill.agreement.Installment;
import icequill.agreement.NearestDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which payments of an agreement are to be billed.
 *
 * @param ready in their order
 * @param waiting those of visits that were to be done and are not recorded as done, where each visit is paid when it is done
 */
public record DuePayments(List<Installment> ready, List<Installment> waiting) {

    private static final DuePayments NONE = new DuePayments(List.of(), List.of());

    public DuePayments {
        ready = List.copyOf(ready);
        waiting = List.copyOf(waiting);
    }

    /**
     * Those that are due up to a day, ask for something and are not billed; none of an agreement that nobody accepted. With what was
     * billed added to what is billed, the same day gives none.
     *
     * @param billed their numbers, from 1
     * @param done days on which planned visits were done
     */
    public static DuePayments of(WholeAgreement agreement, Set<Integer> billed, List<LocalDate> done, LocalDate day) {
        if (agreement.request().accepted().isEmpty()) {
            return NONE;
        }
        List<Installment> all = agreement.payments();
        List<Installment> due = all.stream().filter(payment -> !payment.due().isAfter(day))
                .filter(agreement::isPayable).filter(payment -> !billed.contains(payment.number())).toList();
        return agreement.request().scope().billing().isPresent()
                ? new DuePayments(due, List.of())
                : whenDone(all, due, done);
    }

    /** A visit that was done is that of the payment to whose day it is nearest. */
    private static DuePayments whenDone(List<Installment> all, List<Installment> due, List<LocalDate> done) {
        List<Installment> ready = new ArrayList<>();
        List<Installment> waiting = new ArrayList<>();
        Set<Integer> paid = done.stream()
                .flatMap(visit -> NearestDay.of(all, Installment::due, visit).stream()).map(Installment::number)
                .collect(Collectors.toSet());
        due.forEach(payment -> (paid.contains(payment.number()) ? ready : waiting).add(payment));
        return new DuePayments(ready, waiting);
    }
}
