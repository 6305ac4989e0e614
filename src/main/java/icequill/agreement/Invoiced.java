package icequill.agreement;

import java.util.HashMap;
import java.util.List;
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

    /**
     * As payments were before an early end, after which some were invoiced for less.
     *
     * @param less by how much they ask for less
     */
    public Invoiced beforeEnd(List<PaymentChange.GivenBack> less) {
        Map<Integer, MonetaryAmount> before = new HashMap<>(nets);
        less.forEach(part -> before.computeIfPresent(part.payment(), (number, net) -> net.add(part.amount())));
        return new Invoiced(before);
    }

    boolean has(Installment payment) {
        return nets.containsKey(payment.number());
    }
}
