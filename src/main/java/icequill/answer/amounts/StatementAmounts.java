package icequill.answer.amounts;

import icequill.account.Ageing;
import icequill.account.Movement;
import icequill.document.Statement;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/**
 * Of a statement.
 *
 * @param owed invoices of which something is open
 * @param credits that are not used up
 * @param pastDue by how many days
 * @param movements of the account, the oldest first
 */
public record StatementAmounts(MonetaryAmount balance, List<OpenBill> owed, List<Credit> credits,
        MonetaryAmount notYetDue, List<PastDue> pastDue, MonetaryAmount broughtForward, List<Line> movements)
        implements
        PaperAmounts {

    /**
     * What the customer has to his credit.
     *
     * @param number of the credit note; missing for money on account
     * @param open negative
     */
    public record Credit(Optional<String> number, LocalDate date, MonetaryAmount open) {}

    /**
     * What is late.
     *
     * @param untilDay the last day past due of the bracket; missing for the last, which has no end
     */
    public record PastDue(Optional<Integer> untilDay, MonetaryAmount amount) {}

    /**
     * One movement, and the balance after it.
     *
     * @param tax of what was taken off for paying early, zero where the tax stays; missing for anything else
     */
    public record Line(LocalDate date, Movement.Kind kind, List<String> numbers, MonetaryAmount amount,
            Optional<MonetaryAmount> tax, MonetaryAmount balance) {}

    public StatementAmounts {
        owed = List.copyOf(owed);
        credits = List.copyOf(credits);
        pastDue = List.copyOf(pastDue);
        movements = List.copyOf(movements);
    }

    static StatementAmounts of(Statement statement) {
        return new StatementAmounts(statement.balance(), OpenBill.of(statement.owed()), statement.credits().stream()
                .map(credit -> new Credit(credit.number(), credit.date(), credit.open().negate())).toList(),
                statement.ageing().notYetDue(), late(statement.ageing()), statement.broughtForward(),
                statement.lines().stream().map(line -> new Line(line.movement().date(), line.movement().kind(),
                        line.movement().numbers(), line.movement().amount(), line.movement().tax(), line.balance()))
                        .toList());
    }

    private static List<PastDue> late(Ageing ageing) {
        return IntStream.range(0, ageing.pastDue().size())
                .mapToObj(i -> new PastDue(i < ageing.bounds().size()
                        ? Optional.of(ageing.bounds().get(i))
                        : Optional.empty(), ageing.pastDue().get(i)))
                .toList();
    }
}
