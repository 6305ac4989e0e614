package icequill.render;

import icequill.account.Account;
import icequill.account.Ageing;
import icequill.account.Claims;
import icequill.account.Credited;
import icequill.account.Invoiced;
import icequill.account.LateTerms;
import icequill.account.Movement;
import icequill.account.PaidBack;
import icequill.account.Payment;
import icequill.account.Standing;
import icequill.document.Invoice;
import icequill.document.Reminder;
import icequill.document.Statement;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Place;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Papers about the account of an invoice fixture's customer, with everything that they can say. */
public record AccountFixture(Invoice billed, int lines) {

    private static final LocalDate DAY = LocalDate.of(2026, 8, 31);
    private static final Optional<String> CHECK = Optional.of("check & 2207");

    /** As many invoices past due as the fixture has lines. */
    public Statement statement() {
        Standing standing = Standing.of(account(), DAY);
        List<Statement.Line> movements = new ArrayList<>();
        MonetaryAmount balance = amount("0");
        for (Movement movement : standing.movements()) {
            balance = balance.add(movement.amount());
            movements.add(new Statement.Line(movement, balance));
        }
        return new Statement(DAY, billed.shop(), billed.language(), billed.size(), billed.billTo(),
                billed.vendorNumber(), standing.owed(), standing.credits(),
                Ageing.of(standing.owed(), Ageing.USUAL, standing.currency()), standing.balance(),
                LocalDate.of(2026, 1, 1), amount("0"), movements, standing.later());
    }

    public Reminder reminder() {
        Standing standing = Standing.of(account(), DAY);
        LateTerms terms = new LateTerms(Percent.of("12"), Percent.of("16"), 365, 5, 1,
                List.of(new LateTerms.Fixed(amount("0"), amount("25"))),
                new Wording("our <terms> of payment", "nuestras <condiciones> de pago"));
        return new Reminder(DAY, billed.shop(), billed.language(), billed.size(), billed.billTo(),
                billed.vendorNumber(), Reminder.Level.SECOND, List.of(LocalDate.of(2026, 7, 6)), DAY.plusDays(10),
                Claims.of(standing, Optional.of(terms)),
                Optional.of(new Reminder.Late(terms.rate(), terms.basis())),
                new Reminder.Contact(Optional.of("Rosa & Co."), "555-0143"), standing.later());
    }

    private Account account() {
        List<Invoiced> invoices = new ArrayList<>();
        for (int i = 1; i <= lines; i++) {
            invoices.add(invoiced("2026-1" + i, DAY.minusDays(i), Optional.empty()));
        }
        invoices.add(invoiced("2026-0131", DAY.plusDays(28), Optional.empty()));
        invoices.add(invoiced("2026-0108", DAY.minusDays(68), dispute(Optional.of(amount("400")))));
        invoices.add(invoiced("2026-0109", DAY.minusDays(69), dispute(Optional.empty())));
        invoices.add(invoiced("2026-0031", DAY.minusDays(100), Optional.empty()));
        Credited credit = new Credited("C-2026-0044", DAY.minusDays(60), amount("200"), Optional.of("2026-0108"),
                List.of(new PaidBack(DAY.minusDays(50), amount("50"), CHECK, Place.NOWHERE)), Place.NOWHERE);
        Credited open = new Credited("C-2026-0045", DAY.minusDays(20), amount("90"), Optional.empty(), List.of(),
                Place.NOWHERE);
        return new Account(billed.shop().currency(), invoices, List.of(credit, open),
                List.of(payment(DAY.minusDays(70), "300", "2026-0031"), payment(DAY.plusDays(3), "100", "2026-0031"),
                        payment(DAY.minusDays(9), "40")));
    }

    private static Optional<Invoiced.Dispute> dispute(Optional<MonetaryAmount> amount) {
        return Optional.of(new Invoiced.Dispute("Night <rate>.", amount, Place.NOWHERE));
    }

    private Invoiced invoiced(String number, LocalDate due, Optional<Invoiced.Dispute> dispute) {
        return new Invoiced(number, due.minusDays(30), due, amount("1300"), Optional.of("PO-9"),
                Optional.of("04" + number.length()), dispute,
                Place.NOWHERE);
    }

    private Payment payment(LocalDate date, String amount, String... invoices) {
        return new Payment(date, amount(amount), CHECK,
                Stream.of(invoices).map(number -> new Payment.Share(number, date, amount(amount))).toList(),
                Place.NOWHERE);
    }

    private MonetaryAmount amount(String number) {
        return Amounts.of(new BigDecimal(number), billed.shop().currency());
    }
}
