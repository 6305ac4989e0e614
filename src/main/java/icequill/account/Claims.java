package icequill.account;

import icequill.explain.Explanation;
import icequill.money.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What a reminder may ask for. Credits that are not set off are taken off what is longest due, so that nobody is asked for
 * money that we hold, nor for interest on it. Interest is figured on what is still open and asked for, so what was paid late
 * bears none.
 *
 * @param claims invoices past due of which not everything is disputed, the longest due first
 * @param disputed invoices past due that are disputed, in whole or in part
 */
public record Claims(CurrencyUnit currency, List<Claim> claims, List<Owed> disputed) {

    public Claims {
        claims = List.copyOf(claims);
        disputed = List.copyOf(disputed);
    }

    /**
     * What may be asked for on the day of the standing.
     *
     * @param terms empty where nothing is asked for paying late
     */
    public static Claims of(Standing standing, Optional<LateTerms> terms) {
        List<Owed> late = standing.owed().stream().filter(Owed::isPastDue).toList();
        List<Claim> claims = new ArrayList<>();
        MonetaryAmount credit = standing.credit();
        for (Owed owed : late.stream().filter(one -> one.agreed().isPositive()).toList()) {
            MonetaryAmount setOff = credit.isGreaterThan(owed.agreed()) ? owed.agreed() : credit;
            credit = credit.subtract(setOff);
            MonetaryAmount asked = owed.agreed().subtract(setOff);
            claims.add(new Claim(owed, setOff, asked, terms.filter(known -> asked.isPositive())
                    .filter(known -> known.isBeyondGrace(owed.daysLate()))
                    .map(known -> late(known, asked, owed.daysLate()))));
        }
        return new Claims(standing.currency(), claims,
                late.stream().filter(owed -> owed.disputed().isPresent()).toList());
    }

    private static Claim.Late late(LateTerms terms, MonetaryAmount asked, long daysLate) {
        Explanation how = terms.interest(asked, daysLate);
        return new Claim.Late(how.amount(asked.getCurrency()), how, terms.fixedFor(asked));
    }

    /** What is asked for of the invoices. */
    public MonetaryAmount asked() {
        return sum(Claim::asked);
    }

    /** What is asked for on top, for paying late. */
    public MonetaryAmount onTop() {
        return sum(Claim::onTop);
    }

    /** All that is asked for. */
    public MonetaryAmount total() {
        return asked().add(onTop());
    }

    private MonetaryAmount sum(Function<Claim, MonetaryAmount> part) {
        return Amounts.sum(claims.stream().map(part).toList(), currency);
    }
}
