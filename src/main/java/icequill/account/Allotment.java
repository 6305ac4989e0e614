package icequill.account;

import icequill.account.Payment.Share;
import icequill.money.MinorUnits;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * What a payment is taken to be for where nobody says: the bills that the payer's reference names; else the fewest, oldest bills that
 * come to it exactly, with what was offered for paying early or without; else those that are longest due, one after the other. What is left stays on account. What is disputed is not
 * taken to be paid, unless the payer names the bill.
 */
public record Allotment(List<Share> shares, Reason reason) {

    /** Sums of bills are looked through up to so many; beyond, what is longest due is taken. */
    private static final int MOST_TRIED = 200_000;
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}-]+");

    /** Why it is taken to be for them. */
    public enum Reason {
        NAMED, EXACT_SUM, LONGEST_DUE, NOTHING_OPEN
    }

    public Allotment {
        shares = List.copyOf(shares);
    }

    /**
     * What is likely meant.
     *
     * @param open every bill that is open; later ones than the payment only count when they are named
     */
    public static Allotment of(MonetaryAmount amount, LocalDate day, Optional<String> reference, List<Owed> open) {
        List<Owed> named = open.stream().filter(owed -> isNamed(owed.number(), reference.orElse(""))).toList();
        if (!named.isEmpty()) {
            return new Allotment(inTurn(amount, day, named, Owed::open), Reason.NAMED);
        }
        List<Owed> billed = open.stream().filter(owed -> !owed.date().isAfter(day))
                .filter(owed -> owed.agreed().isPositive()).sorted(Comparator.comparing(Owed::due)).toList();
        if (billed.isEmpty()) {
            return new Allotment(List.of(), Reason.NOTHING_OPEN);
        }
        List<Owed> exact = new Search(billed, Owed::agreed).fewest(amount);
        if (!exact.isEmpty()) {
            return new Allotment(inTurn(amount, day, exact, Owed::agreed), Reason.EXACT_SUM);
        }
        List<Owed> early = new Search(billed, bill -> bill.enough(day)).fewest(amount);
        return early.isEmpty()
                ? new Allotment(inTurn(amount, day, billed, Owed::agreed), Reason.LONGEST_DUE)
                : new Allotment(inTurn(amount, day, early, bill -> bill.enough(day)), Reason.EXACT_SUM);
    }

    /** As a word of its own, with capitals or without. */
    private static boolean isNamed(String number, String reference) {
        return BETWEEN.splitAsStream(reference.toLowerCase(Locale.ROOT))
                .anyMatch(number.toLowerCase(Locale.ROOT)::equals);
    }

    /** Each gets the most that it may, as far as the money goes. */
    private static List<Share> inTurn(MonetaryAmount amount, LocalDate day, List<Owed> bills,
            Function<Owed, MonetaryAmount> most) {
        List<Share> shares = new ArrayList<>();
        MonetaryAmount left = amount;
        for (Owed bill : bills) {
            MonetaryAmount wanted = most.apply(bill);
            MonetaryAmount taken = wanted.isGreaterThan(left) ? left : wanted;
            if (taken.isPositive()) {
                shares.add(new Share(bill.number(), bill.date().isAfter(day) ? bill.date() : day, taken));
                left = left.subtract(taken);
            }
        }
        return shares;
    }

    /** Looks for bills that come to a sum, of which the oldest stand first; all in minor units. */
    private static final class Search {

        private final List<Owed> bills;
        private final long[] open;
        /** What the bills from each on come to together. */
        private final long[] together;
        private int tried;

        Search(List<Owed> bills, Function<Owed, MonetaryAmount> sum) {
            this.bills = bills;
            this.open = bills.stream().mapToLong(bill -> MinorUnits.of(sum.apply(bill))).toArray();
            this.together = new long[open.length + 1];
            for (int i = open.length - 1; i >= 0; i--) {
                together[i] = together[i + 1] + open[i];
            }
        }

        /** None where no bills come to the sum, or too many would have to be tried. */
        List<Owed> fewest(MonetaryAmount sum) {
            List<Owed> found = List.of();
            for (int count = 1; found.isEmpty() && count <= open.length; count++) {
                found = from(0, count, MinorUnits.of(sum));
            }
            return found;
        }

        private List<Owed> from(int first, int count, long sum) {
            for (int i = first; i <= open.length - count && together[i] >= sum && tried < MOST_TRIED; i++) {
                tried++;
                long left = sum - open[i];
                if (count == 1 && left == 0) {
                    return List.of(bills.get(i));
                }
                List<Owed> rest = count > 1 && left > 0 ? from(i + 1, count - 1, left) : List.of();
                if (!rest.isEmpty()) {
                    return Stream.concat(Stream.of(bills.get(i)), rest.stream()).toList();
                }
            }
            return List.of();
        }
    }
}
