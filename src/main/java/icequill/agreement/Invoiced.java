package icequill.agreement;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/**
 * Which of an agreement's payments were invoiced, and for how much.
 *
 * @param nets before tax, by the number of the payment
 * @param done days on which visits of its calendar were done; none where that bears on no payment
 */
public record Invoiced(Map<Integer, MonetaryAmount> nets, Set<LocalDate> done) {

    public static final Invoiced NOTHING = new Invoiced(Map.of());

    public Invoiced {
        nets = Map.copyOf(nets);
        done = Set.copyOf(done);
    }

    public Invoiced(Map<Integer, MonetaryAmount> nets) {
        this(nets, Set.of());
    }

    /** Without months after the term: changes are carried by the payments of the term. */
    Invoiced withinTerm() {
        return new Invoiced(nets.entrySet().stream().filter(entry -> entry.getKey() < MonthByMonth.FIRST)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)), done);
    }

    /** Only what was invoiced of some of the payments. */
    Invoiced of(List<Installment> payments, Predicate<Installment> some) {
        return new Invoiced(payments.stream().filter(this::has).filter(some)
                .collect(Collectors.toMap(Installment::number, payment -> nets.get(payment.number()))), done);
    }

    boolean has(Installment payment) {
        return nets.containsKey(payment.number());
    }

    /** Whether a payment was invoiced for what it comes to. */
    boolean isAsIs(Installment payment) {
        return has(payment) && payment.amount().isEqualTo(nets.get(payment.number()));
    }
}
