package icequill.document;

import icequill.agreement.Installment;
import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.party.Wording;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * One of the ways in which a customer can have his machines looked after, for a year.
 *
 * @param plan empty where it is no plan of the shop's
 * @param visits planned in the year
 * @param fullCleans how many of them are full cleanings
 * @param months the most from one full cleaning to the next; empty without any
 * @param net what is planned costs, before tax
 * @param tax estimated at today's rules
 * @param payments into which a plan's price is divided in the first year, before tax; empty without a plan
 * @param reasons what speaks for it and against it
 */
public record PlanChoice(Kind kind, Optional<Wording> plan, int visits, int fullCleans, Optional<Integer> months,
        MonetaryAmount net, Explanation how, MonetaryAmount tax, List<Installment> payments, List<Phrase> reasons) {

    /** What sort of choice it is. */
    public enum Kind {
        PAY_PER_CALL, BOOKED_SINGLY, AGREEMENT
    }

    public PlanChoice {
        payments = List.copyOf(payments);
        reasons = List.copyOf(reasons);
    }

    /** With the estimated tax. */
    public MonetaryAmount gross() {
        return net.add(tax);
    }
}
