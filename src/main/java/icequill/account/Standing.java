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
        List<Movement> all = movements(account);
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

    private static List<Movement> movements(Account account) {
        Stream<Movement> invoices = account.invoices().stream()
                .flatMap(invoice -> Stream.concat(
                        Stream.of(new Movement(invoice.date(), Movement.Kind.INVOICE, Optional.of(invoice.number()),
                                invoice.purchaseOrder(), invoice.total(), invoice.place())),
                        invoice.payments().stream().map(payment -> paid(payment, Movement.Kind.PAYMENT,
                                Optional.of(invoice.number()), payment.amount().negate()))));
        Stream<Movement> credits = account.credits().stream()
                .flatMap(credit -> Stream.concat(
                        Stream.of(new Movement(credit.date(), Movement.Kind.CREDIT_NOTE, Optional.of(credit.number()),
                                credit.corrects(), credit.total().negate(), credit.place())),
                        credit.paidBack().stream().map(payment -> paid(payment, Movement.Kind.PAID_BACK,
                                Optional.of(credit.number()), payment.amount()))));
        Stream<Movement> onAccount = account.onAccount().stream().map(
                payment -> paid(payment, Movement.Kind.ON_ACCOUNT, Optional.empty(), payment.amount().negate()));
        return Stream.of(invoices, credits, onAccount).flatMap(all -> all)
                .sorted(Comparator.comparing(Movement::date).thenComparing(Movement::kind)).toList();
    }

    private static Movement paid(Payment payment, Movement.Kind kind, Optional<String> number,
            MonetaryAmount amount) {
        return new Movement(payment.date(), kind, number, payment.reference(), amount, payment.place());
    }
}
