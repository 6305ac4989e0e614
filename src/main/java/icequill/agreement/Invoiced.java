package icequill.agreement;

import java.util.Map;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/**
 * Which of an agreement's payments were invoiced, and for how much.
 *
 * @param nets before tax, by the number of the payment
 */
public record Invoiced(Map<Integer, MonetaryAmount> nets) {

    public static final Invoiced NOTHING = new Invoiced(Map.of());

    public Invoiced {
        nets = Map.copyOf(nets);
    }

    /** Without months after the term: changes are carried by the payments of the term. */
    Invoiced withinTerm() {
        return new Invoiced(nets.entrySet().stream().filter(entry -> entry.getKey() < MonthByMonth.FIRST)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    boolean has(Installment payment) {
        return nets.containsKey(payment.number());
    }
}
