package icequill.account;

import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * How an account stands at the end of a day.
 *
 * @param owed by the day they are due
 * @param credits by date
 * @param movements up to the day, in order; their sum is the balance
 * @param later movements that do not count because they are dated after the day, in order
 */
public record Standing(LocalDate day, CurrencyUnit currency, List<Owed> owed, List<OpenCredit> credits,
        List<Movement> movements, List<Movement> later) {

    public Standing {
        owed = List.copyOf(owed);
        credits = List.copyOf(credits);
        movements = List.copyOf(movements);
        later = List.copyOf(later);
    }

    /** What is dated after the day does not count. The account must keep the {@link AccountRules}. */
    public static Standing of(Account account, LocalDate day) {
        Settlement settlement = Settlement.of(account, day);
        List<Movement> all = movements(account, day);
        return new Standing(day, account.currency(), settlement.owed(), settlement.credits(),
                all.stream().filter(movement -> !movement.date().isAfter(day)).toList(),
                all.stream().filter(movement -> movement.date().isAfter(day)).toList());
    }

    /** What is owed in all; negative when more is credited than owed. */
    public MonetaryAmount balance() {
        return Amounts.sum(movements.stream().map(Movement::amount).toList(), currency);
    }

    /** What the customer has to his credit and that is not set off. */
    public MonetaryAmount credit() {
        return Amounts.sum(credits.stream().map(OpenCredit::open).toList(), currency);
    }

    private static List<Movement> movements(Account account, LocalDate day) {
        Stream<Movement> invoices = account.invoices().stream().map(invoice -> new Movement(invoice.date(),
                Movement.Kind.INVOICE, List.of(invoice.number()), invoice.purchaseOrder(), invoice.total(),
                Optional.empty(), invoice.place()));
        Stream<Movement> credits = account.credits().stream()
                .flatMap(credit -> Stream.concat(
                        Stream.of(new Movement(credit.date(), Movement.Kind.CREDIT_NOTE, List.of(credit.number()),
                                credit.corrects(), credit.total().negate(), Optional.empty(), credit.place())),
                        credit.paidBack().stream().map(back -> new Movement(back.date(), Movement.Kind.PAID_BACK,
                                List.of(credit.number()), back.reference(), back.amount(), Optional.empty(),
                                back.place()))));
        Stream<Movement> payments = account.payments().stream().map(payment -> paid(payment, day));
        Stream<Movement> discounts = account.invoices().stream()
                .flatMap(invoice -> EarlyDiscount.of(account, invoice).stream())
                .map(off -> new Movement(off.day(), Movement.Kind.EARLY_PAYMENT, List.of(off.invoice().number()),
                        Optional.empty(), off.amount().negate(), Optional.of(off.tax().negate()),
                        off.invoice().place()));
        return Stream.of(invoices, credits, payments, discounts).flatMap(all -> all)
                .sorted(Comparator.comparing(Movement::date).thenComparing(Movement::kind)).toList();
    }

    /** What it is for is told as it is known by the day, or of a later payment, on its own day. */
    private static Movement paid(Payment payment, LocalDate day) {
        LocalDate known = payment.date().isAfter(day) ? payment.date() : day;
        List<String> numbers = payment.counting(known).map(Payment.Share::number).distinct().toList();
        Movement.Kind paid = payment.onAccount(known).isPositive()
                ? Movement.Kind.PART_ON_ACCOUNT
                : Movement.Kind.PAYMENT;
        return new Movement(payment.date(), numbers.isEmpty() ? Movement.Kind.ON_ACCOUNT : paid, numbers,
                payment.reference(), payment.amount().negate(), Optional.empty(), payment.place());
    }
}
