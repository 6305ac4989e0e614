package icequill.papers;

import icequill.document.InvoiceLine;
import icequill.document.LineCredit;
import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Percent;
import icequill.money.Shares;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.CreditPart;
import icequill.work.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/**
 * What goes back of some lines of an invoice.
 *
 * @param numbers of the lines, at least one; of none has all gone back
 */
record CreditParts(CreditLines known, List<Integer> numbers) {

    /** A line that goes back, and its number on the invoice. */
    record Part(int number, InvoiceLine line) {}

    CreditParts {
        numbers = List.copyOf(numbers);
    }

    /** The parts, or why there is not so much to give back. */
    Validated<List<Part>> of(CreditPart wish) {
        return switch (wish) {
        case CreditPart.Rest all -> Validated
                .valid(numbers.stream().map(number -> new Part(number, known.line(number).rest())).toList());
        case CreditPart.OfAmount part -> shares(part.amount());
        case CreditPart.OfPercent part -> percents(part.percent());
        case CreditPart.OfQuantity part -> count(part.number());
        };
    }

    private Validated<List<Part>> shares(BigDecimal amount) {
        List<Integer> charged = charged();
        List<MonetaryAmount> left = charged.stream().map(number -> known.line(number).baseLeft()).toList();
        MonetaryAmount sum = least(Amounts.sum(left, known.currency()), known.left());
        Optional<MonetaryAmount> whole = Optional.of(Exact.normal(amount))
                .filter(part -> part.scale() <= known.currency().getDefaultFractionDigits() && part.signum() > 0)
                .map(part -> Amounts.of(part, known.currency()))
                .filter(part -> part.isLessThanOrEqualTo(sum));
        return whole.map(part -> Validated.valid(shares(charged, left, part)))
                .orElseGet(() -> wrong(amount.toPlainString() + of(numbers) + " cannot be given back",
                        sum.isPositive()
                                ? "an amount before tax, above 0 and up to the " + Amounts.plain(sum)
                                        + " that are left of " + (numbers.size() == 1 ? "it" : "them")
                                : "a line that was charged"));
    }

    /** Of one line it is a part of it as such. */
    private List<Part> shares(List<Integer> charged, List<MonetaryAmount> left, MonetaryAmount whole) {
        if (charged.size() == 1) {
            int number = charged.getFirst();
            return List.of(new Part(number, known.line(number).part(whole)));
        }
        List<MonetaryAmount> shares = Shares.byLargestRemainder(whole, left.stream().map(Amounts::number).toList());
        return IntStream.range(0, charged.size()).filter(i -> shares.get(i).isPositive())
                .mapToObj(i -> new Part(charged.get(i), known.line(charged.get(i)).share(whole, left, i))).toList();
    }

    /** What was taken back goes back with what was charged. */
    private Validated<List<Part>> percents(Percent percent) {
        List<Part> parts = new ArrayList<>();
        List<Integer> tooMuch = new ArrayList<>();
        for (int number : numbers) {
            LineCredit line = known.line(number);
            InvoiceLine part = line.part(percent);
            MonetaryAmount over = part.net().abs().subtract(line.left().abs());
            if (over.isGreaterThan(least())) {
                tooMuch.add(number);
            } else if (!part.net().isZero() && !line.left().isZero()) {
                parts.add(new Part(number, over.isPositive() ? line.rest() : part));
            }
        }
        String said = percent.value().toPlainString() + " %";
        if (!tooMuch.isEmpty()) {
            return wrong(said + " is more than what is left" + of(tooMuch), "less, or the rest without a percentage");
        }
        return parts.isEmpty()
                ? wrong(said + of(numbers) + " comes to nothing", "lines that were charged, and a larger part")
                : Validated.valid(parts);
    }

    private static MonetaryAmount least(MonetaryAmount one, MonetaryAmount other) {
        return other.isLessThan(one) ? other : one;
    }

    /** Two halves may each have been rounded up. */
    private MonetaryAmount least() {
        return Amounts.of(BigDecimal.ONE.movePointLeft(known.currency().getDefaultFractionDigits()), known.currency());
    }

    private Validated<List<Part>> count(BigDecimal number) {
        if (numbers.size() != 1) {
            return wrong("so many of one line, and these are the lines " + numbers, "one of them");
        }
        LineCredit line = known.line(numbers.getFirst());
        Optional<Quantity> left = line.countLeft();
        if (left.isEmpty() || !line.billed().net().isPositive()) {
            return wrong("line " + numbers.getFirst() + (left.isEmpty() ? " has no price for one" : " was not charged"),
                    left.isEmpty() ? "an amount or a percentage of it" : "a line that was charged");
        }
        String unit = " " + left.get().unit().symbol();
        if (number.signum() <= 0 || number.compareTo(left.get().number()) > 0) {
            return wrong(number.toPlainString() + unit + of(numbers) + " cannot be given back",
                    "above 0 and up to the " + left.get().number().toPlainString() + unit + " that are left of it");
        }
        InvoiceLine part = line.count(number);
        if (!part.net().isPositive() || part.net().isGreaterThan(line.left())) {
            return wrong(number.toPlainString() + unit + of(numbers) + " come to " + Amounts.plain(part.net()),
                    "more than 0.00 and at most the " + Amounts.plain(line.left()) + " that are left of it");
        }
        return Validated.valid(List.of(new Part(numbers.getFirst(), part)));
    }

    private List<Integer> charged() {
        return numbers.stream().filter(number -> known.line(number).baseLeft().isPositive()).toList();
    }

    private static String of(List<Integer> numbers) {
        return numbers.size() == 1 ? " of line " + numbers.getFirst() : " of the lines " + numbers;
    }

    private static Validated<List<Part>> wrong(String text, String allowed) {
        return Validated.invalid(new Problem(Code.OUT_OF_RANGE, Place.NOWHERE, text, allowed));
    }
}
