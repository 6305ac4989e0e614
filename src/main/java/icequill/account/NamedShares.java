package icequill.account;

import icequill.account.Payment.Share;
import icequill.account.PaymentRequest.Named;
import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.money.MonetaryAmount;

/**
 * What a payment is said to be for, held against what is open.
 *
 * @param amount that there is to share out
 * @param day of the payment
 * @param open bills of the payer's account, by number
 * @param notOpen what is said of one that is not among them
 */
public record NamedShares(MonetaryAmount amount, LocalDate day, Map<String, Open> open,
        Function<Named, Problem> notOpen) {

    /** What is open of a bill. */
    public record Open(LocalDate date, MonetaryAmount amount) {}

    public NamedShares {
        open = Map.copyOf(open);
    }

    /**
     * The shares, or all that is wrong.
     *
     * @param place of the payment as a whole
     */
    public Validated<List<Share>> of(List<Named> named, Place place) {
        Problems problems = new Problems();
        List<Share> shares = new ArrayList<>();
        Set<Object> seen = new HashSet<>();
        Map<String, Open> before = new HashMap<>(open);
        MonetaryAmount left = amount;
        for (Named bill : named) {
            Open bounds = before.get(bill.number());
            if (!seen.add(List.of(bill.number(), bill.day()))) {
                problems.add(Code.DUPLICATE_NAME, bill.place(), bill.number() + " stands here a second time",
                        "each bill once, or from another day on");
            } else if (bounds == null) {
                problems.add(notOpen.apply(bill));
            } else {
                MonetaryAmount part = bill.amount().orElse(smaller(bounds.amount(), left));
                shares.add(new Share(bill.number(), counts(bill, bounds, problems), part));
                within(bill, part, bounds, problems);
                before.put(bill.number(), new Open(bounds.date(), bounds.amount().subtract(part)));
                left = left.subtract(part);
            }
        }
        if (left.isNegative() && problems.isEmpty()) {
            problems.add(Code.OUT_OF_RANGE, place, "the parts for bills: " + Amounts.plain(amount.subtract(left))
                    + ", more than the " + Amounts.plain(amount) + " that there is", "parts of it");
        }
        return problems.or(() -> shares);
    }

    private static void within(Named bill, MonetaryAmount part, Open bounds, Problems problems) {
        if (!part.isPositive()) {
            problems.add(Code.OUT_OF_RANGE, bill.place(), "nothing of the payment is left for " + bill.number(),
                    "bills that it is enough for");
        } else if (part.isGreaterThan(bounds.amount())) {
            problems.add(Code.OUT_OF_RANGE, bill.place(), Amounts.plain(part) + " for " + bill.number()
                    + ", of which " + Amounts.plain(bounds.amount()) + " is open",
                    "at most " + Amounts.plain(bounds.amount()) + "; the rest stays on account");
        }
    }

    private LocalDate counts(Named bill, Open bounds, Problems problems) {
        LocalDate first = bounds.date().isAfter(day) ? bounds.date() : day;
        Optional<LocalDate> asked = bill.day();
        asked.filter(from -> from.isBefore(first)).ifPresent(from -> problems.add(Code.WRONG_ORDER, bill.place(),
                bill.number() + " is to be paid from " + from + " on, before the payment or the bill itself",
                first + " or a later day"));
        return asked.orElse(first);
    }

    private static MonetaryAmount smaller(MonetaryAmount one, MonetaryAmount other) {
        return one.isGreaterThan(other) ? other : one;
    }
}
