package icequill.agreement;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * An agreement's payments after a change of its price. What was invoiced stays as it was invoiced; all payments, less what is
 * given back, add up to the price with the change.
 *
 * @param payments by number
 * @param givenBack of payments by this change, the latest first, where the price falls by more than the payments to come; with
 * what earlier changes gave back each at most what the payment was, and to be given back by a credit note for its invoice
 * @param before what earlier changes gave back
 */
public record PaymentChange(List<Installment> payments, List<GivenBack> givenBack, List<GivenBack> before) {

    /**
     * What a credit note gives back of a payment.
     *
     * @param payment its number
     * @param amount before tax, positive
     */
    public record GivenBack(int payment, MonetaryAmount amount) {}

    public PaymentChange {
        payments = List.copyOf(payments);
        givenBack = List.copyOf(givenBack);
        before = List.copyOf(before);
    }

    /** The payments before any change. */
    public static PaymentChange none(List<Installment> payments) {
        return new PaymentChange(payments, List.of(), List.of());
    }

    /** What this change and those before it give back of a payment, before tax. */
    public MonetaryAmount givenBack(Installment payment) {
        return sumOf(allGivenBack(), payment);
    }

    private static MonetaryAmount sumOf(List<GivenBack> parts, Installment payment) {
        return Amounts.sum(parts.stream().filter(part -> part.payment() == payment.number()).map(GivenBack::amount)
                .toList(), payment.amount().getCurrency());
    }

    private List<GivenBack> allGivenBack() {
        return Stream.concat(before.stream(), givenBack.stream()).toList();
    }

    /**
     * How the payments carry a change: evenly by those that are due on its day or later and were not invoiced before it. An invoice of one
     * of those that asks for something else than the payment before the change was written after it, and has its share of it; what other
     * invoices have is for {@link #settled} to weigh, after the last change.
     *
     * @param earlier the payments as they were, with all that earlier changes gave back of them
     */
    public static PaymentChange of(Proration change, PaymentChange earlier, Invoiced all) {
        Invoiced invoiced = all.withinTerm();
        Predicate<Installment> isBefore = payment -> payment.due().isBefore(change.from());
        List<Installment> known = asInvoiced(earlier.payments(), invoiced.of(earlier.payments(), isBefore),
                change.from());
        // An invoice may carry what no payment did.
        MonetaryAmount rest = change.amount().subtract(difference(earlier.payments(), known, change));
        List<Installment> open = known.stream()
                .filter(payment -> !isBefore.test(payment) && !invoiced.isAsIs(payment)).toList();
        return earlier.carried(new Proration(change.from(), rest, change.how()), known, open);
    }

    /** The same once no more changes follow: where an invoice has another share than it should, those that are not invoiced even it out. */
    public PaymentChange settled(Proration last, Invoiced all) {
        Invoiced invoiced = all.withinTerm();
        List<Installment> known = asInvoiced(payments, invoiced, last.from());
        List<Installment> open = known.stream()
                .filter(payment -> !invoiced.has(payment) && !payment.due().isBefore(last.from())).toList();
        PaymentChange next = carried(new Proration(last.from(), difference(known, payments, last), last.how()), known,
                open);
        return new PaymentChange(next.payments(), Stream.concat(givenBack.stream(), next.givenBack().stream()).toList(),
                before);
    }

    private static MonetaryAmount difference(List<Installment> before, List<Installment> after, Proration change) {
        CurrencyUnit currency = change.amount().getCurrency();
        return sum(after, currency).subtract(sum(before, currency));
    }

    /** What is added, or falls away, where some of the payments may carry it. */
    private PaymentChange carried(Proration rest, List<Installment> known, List<Installment> open) {
        if (open.isEmpty() && rest.amount().isPositive()) {
            Explanation how = new Explanation(Figure.price(rest.amount(), ""), rest.how().reasons());
            List<Installment> more = new ArrayList<>(known);
            more.add(new Installment(known.stream().mapToInt(Installment::number).max().orElse(0) + 1, rest.from(),
                    rest.amount(), how));
            return new PaymentChange(more, List.of(), allGivenBack());
        }
        MonetaryAmount room = sum(open, rest.amount().getCurrency()).negate();
        MonetaryAmount shared = Amounts.larger(rest.amount(), room);
        return new PaymentChange(merged(known, shares(open, shared)),
                further(known.stream().filter(payment -> !open.contains(payment)).toList(),
                        shared.subtract(rest.amount())),
                allGivenBack());
    }

    /**
     * What an early end gives back of payments, each before tax.
     *
     * @param less what those ask for less that were still to be billed then
     * @param credited what goes back, by credit notes, of those that were invoiced
     */
    public record Back(List<GivenBack> less, List<GivenBack> credited) {

        public static final Back NOTHING = new Back(List.of(), List.of());

        public Back {
            less = List.copyOf(less);
            credited = List.copyOf(credited);
        }

        public List<GivenBack> all() {
            return Stream.concat(less.stream(), credited.stream()).toList();
        }

        private MonetaryAmount of(Installment payment) {
            return sumOf(all(), payment);
        }

        /** What was invoiced, as if those that were to be billed at the end had been before it. */
        public Invoiced without(Invoiced after) {
            Map<Integer, MonetaryAmount> before = new HashMap<>(after.nets());
            less.forEach(part -> before.computeIfPresent(part.payment(), (number, net) -> net.add(part.amount())));
            return new Invoiced(before);
        }
    }

    /**
     * From which payments an amount goes back where the agreement ends early: first from those that fall due by then and are still to be
     * billed, then from those that were invoiced, the latest first in each.
     *
     * @param amount before tax, at most what the payments by the last day come to
     */
    public Back givingBack(MonetaryAmount amount, LocalDate lastDay, Invoiced all) {
        List<Installment> kept = kept(lastDay, all.withinTerm());
        List<Installment> open = kept.stream().filter(payment -> !all.has(payment)).toList();
        List<GivenBack> less = further(open, amount);
        MonetaryAmount rest = less.stream().map(GivenBack::amount).reduce(amount, MonetaryAmount::subtract);
        return new Back(less, further(kept.stream().filter(all::has).toList(), rest));
    }

    /** What the payments that fall due by a day, or were billed before it, come to, less what was given back of them. */
    public MonetaryAmount paidBy(LocalDate lastDay, Invoiced all, CurrencyUnit currency) {
        return Amounts.sum(kept(lastDay, all.withinTerm()).stream()
                .map(payment -> payment.amount().subtract(givenBack(payment))).toList(), currency);
    }

    private List<Installment> kept(LocalDate lastDay, Invoiced invoiced) {
        return asInvoiced(payments, invoiced, lastDay).stream()
                .filter(payment -> invoiced.has(payment) || !payment.due().isAfter(lastDay)).toList();
    }

    /**
     * How the payments stand where the agreement ends early: one that is still to be billed asks for so much less as goes back of it, or for
     * nothing where it is not owed any more; none falls due after the last day.
     *
     * @param back of payments by the last day
     * @param isOwed of a payment as it was before the end
     */
    public PaymentChange ended(LocalDate lastDay, Back back, Invoiced all, Predicate<Installment> isOwed) {
        Invoiced invoiced = all.withinTerm();
        List<Installment> left = asInvoiced(payments, invoiced, lastDay).stream()
                .map(payment -> invoiced.has(payment)
                        ? payment
                        : ending(payment, lastDay, isOwed.test(payment) ? back.of(payment) : payment.amount()))
                .toList();
        return new PaymentChange(left,
                back.credited().stream().filter(part -> invoiced.nets().containsKey(part.payment())).toList(),
                allGivenBack());
    }

    private static Installment ending(Installment payment, LocalDate lastDay, MonetaryAmount less) {
        if (less.isZero()) {
            return payment.due().isAfter(lastDay)
                    ? new Installment(payment.number(), lastDay, payment.amount(),
                            payment.how().because(Phrase.of("reason.done-before-end", new Fact.Day(payment.due()))))
                    : payment;
        }
        return new Installment(payment.number(), payment.due(), payment.amount().subtract(less),
                Explanation.of(Figure.price(payment.amount(), "").minus(Figure.price(less, "")),
                        Phrase.of("reason.ended-on", new Fact.Day(lastDay))));
    }

    private static List<Installment> asInvoiced(List<Installment> before, Invoiced invoiced, LocalDate day) {
        TreeMap<Integer, Installment> known = new TreeMap<>();
        before.forEach(payment -> known.put(payment.number(), payment));
        invoiced.nets().forEach((number, net) -> {
            LocalDate due = known.containsKey(number) ? known.get(number).due() : day;
            if (!known.containsKey(number) || !known.get(number).amount().isEqualTo(net)) {
                known.put(number, new Installment(number, due, net,
                        Explanation.of(Figure.price(net, ""), Phrase.of("reason.as-invoiced"))));
            }
        });
        return List.copyOf(known.values());
    }

    /** Even shares; a payment that its share would bring below nothing comes to nothing, and the others bear the more. */
    private static List<Installment> shares(List<Installment> open, MonetaryAmount amount) {
        if (open.isEmpty() || amount.isZero()) {
            return List.of();
        }
        List<Installment> even = Installments.over(open, amount);
        List<Installment> gone = Stream.iterate(0, i -> i < open.size(), i -> i + 1)
                .filter(i -> open.get(i).amount().add(even.get(i).amount()).isNegative()).map(open::get).toList();
        if (gone.isEmpty()) {
            return even;
        }
        List<Installment> shares = new ArrayList<>(gone.stream().map(payment -> new Installment(payment.number(),
                payment.due(), payment.amount().negate(),
                Explanation.of(Figure.term(0, "").minus(Figure.price(payment.amount(), ""))))).toList());
        shares.addAll(shares(open.stream().filter(payment -> !gone.contains(payment)).toList(),
                amount.subtract(sum(shares, amount.getCurrency()))));
        return shares;
    }

    private static List<Installment> merged(List<Installment> payments, List<Installment> shares) {
        return payments.stream().map(payment -> shares.stream().filter(share -> share.number() == payment.number())
                .findFirst().map(share -> sum(payment, share)).orElse(payment)).toList();
    }

    private static Installment sum(Installment payment, Installment share) {
        Explanation how = new Explanation(Figure.price(payment.amount(), "").plus(Figure.price(share.amount(), "")),
                payment.how().reasons()).because(Phrase.of("reason.change-share", new Fact.Amount(share.amount())));
        return new Installment(payment.number(), payment.due(), payment.amount().add(share.amount()), how);
    }

    private List<GivenBack> further(List<Installment> payments, MonetaryAmount amount) {
        List<GivenBack> all = new ArrayList<>();
        MonetaryAmount left = amount;
        for (Installment payment : payments.stream().sorted(Comparator.comparingInt(Installment::number).reversed())
                .toList()) {
            MonetaryAmount most = payment.amount().subtract(givenBack(payment));
            MonetaryAmount part = left.isGreaterThan(most) ? most : left;
            if (part.isPositive()) {
                all.add(new GivenBack(payment.number(), part));
                left = left.subtract(part);
            }
        }
        return all;
    }

    private static MonetaryAmount sum(List<Installment> payments, CurrencyUnit currency) {
        return Amounts.sum(payments.stream().map(Installment::amount).toList(), currency);
    }
}
