package icequill.account;

import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/** What must hold of an account that can be worked with. */
public record AccountRules(Account account) {

    /** What cannot be true of it, such as a payment above its invoice; empty when it can be worked with. */
    public static List<Problem> problems(Account account) {
        Problems problems = new Problems();
        AccountRules rules = new AccountRules(account);
        rules.numbers(problems);
        account.invoices().forEach(invoice -> rules.check(invoice, problems));
        account.credits().forEach(credit -> rules.check(credit, problems));
        return problems.list();
    }

    private void numbers(Problems problems) {
        Map<String, Place> seen = new HashMap<>();
        account.invoices().forEach(invoice -> once(invoice.number(), invoice.place(), seen, problems));
        account.credits().forEach(credit -> once(credit.number(), credit.place(), seen, problems));
    }

    private static void once(String number, Place place, Map<String, Place> seen, Problems problems) {
        Place first = seen.putIfAbsent(number, place);
        if (first != null) {
            problems.add(Code.DUPLICATE_NAME, place,
                    "the number \"" + number + "\" stands at " + first.reference() + " already",
                    "each invoice and credit note once");
        }
    }

    private void check(Invoiced invoice, Problems problems) {
        inOrder("due on", invoice.due(), invoice.date(), invoice.place(), problems);
        within("the payments", paid(invoice), invoice.total(), invoice.place(),
                "what it comes to; put the rest under onAccount", problems);
        invoice.dispute().ifPresent(dispute -> dispute.amount().ifPresent(amount -> within("what is disputed", amount,
                invoice.total(), dispute.place(), "what it comes to", problems)));
    }

    private void check(Credited credit, Problems problems) {
        within("what was paid back", paidBack(credit), credit.total(), credit.place(),
                "what it comes to", problems);
        credit.paidBack().forEach(payment -> inOrder("paid back on", payment.date(), credit.date(), payment.place(),
                problems));
        credit.corrects().ifPresent(number -> account.invoices().stream()
                .filter(invoice -> invoice.number().equals(number)).findFirst()
                .ifPresentOrElse(invoice -> check(credit, invoice, problems),
                        () -> problems.add(Problem.unknownName(credit.place(), "invoice on this account", number,
                                account.invoices().stream().map(Invoiced::number).toList()))));
    }

    private static void check(Credited credit, Invoiced invoice, Problems problems) {
        inOrder("credited on", credit.date(), invoice.date(), credit.place(), problems);
        within("the credit", credit.total(), invoice.total(), credit.place(), "what the invoice comes to", problems);
    }

    private static void inOrder(String what, LocalDate later, LocalDate date, Place place, Problems problems) {
        if (later.isBefore(date)) {
            problems.add(Code.WRONG_ORDER, place, what + " " + later + ", but dated " + date,
                    "that day or a later one");
        }
    }

    private static void within(String what, MonetaryAmount amount, MonetaryAmount most, Place place, String allowed,
            Problems problems) {
        if (amount.isGreaterThan(most)) {
            problems.add(Code.OUT_OF_RANGE, place,
                    what + ": " + Amounts.plain(amount) + ", more than " + Amounts.plain(most), "at most " + allowed);
        }
    }

    private MonetaryAmount paid(Invoiced invoice) {
        return Amounts.sum(account.payments().stream().flatMap(payment -> payment.shares().stream())
                .filter(share -> share.number().equals(invoice.number())).map(Payment.Share::amount).toList(),
                account.currency());
    }

    private MonetaryAmount paidBack(Credited credit) {
        return Amounts.sum(credit.paidBack().stream().map(PaidBack::amount).toList(), account.currency());
    }
}
