package icequill.account;

import icequill.money.Amounts;
import icequill.problem.Check;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What is open, by how many days it is past due.
 *
 * @param bounds last day of each bracket but the last, rising and positive
 * @param notYetDue what is due on the day or later
 * @param pastDue one sum for each bracket, of which the last has no end
 */
public record Ageing(List<Integer> bounds, MonetaryAmount notYetDue, List<MonetaryAmount> pastDue) {

    /**
     * 1-30, 31-60, 61-90 and over 90 days past due ("Accounting Principles: A Business Perspective", an open textbook,
     * chapter 9, exhibit 77).
     */
    public static final List<Integer> USUAL = List.of(30, 60, 90);

    public Ageing {
        bounds = List.copyOf(bounds);
        pastDue = List.copyOf(pastDue);
        Check.that(pastDue.size() == bounds.size() + 1, "one sum for each bracket, not " + pastDue.size());
    }

    /** Puts each into the bracket of its days past due. */
    public static Ageing of(Collection<Owed> owed, List<Integer> bounds, CurrencyUnit currency) {
        MonetaryAmount none = Amounts.zero(currency);
        MonetaryAmount notYetDue = none;
        List<MonetaryAmount> pastDue = new ArrayList<>(Collections.nCopies(bounds.size() + 1, none));
        for (Owed one : owed) {
            if (one.isPastDue()) {
                int bracket = (int) bounds.stream().filter(bound -> one.daysLate() > bound).count();
                pastDue.set(bracket, pastDue.get(bracket).add(one.open()));
            } else {
                notYetDue = notYetDue.add(one.open());
            }
        }
        return new Ageing(bounds, notYetDue, pastDue);
    }

    /** All that is past due. */
    public MonetaryAmount late() {
        return Amounts.sum(pastDue, notYetDue.getCurrency());
    }

    /** All that is open. */
    public MonetaryAmount sum() {
        return notYetDue.add(late());
    }
}
