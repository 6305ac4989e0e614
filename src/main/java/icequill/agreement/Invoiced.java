package icequill.agreement;

import java.util.Map;
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

    boolean has(Installment payment) {
        return nets.containsKey(payment.number());
    }
}
