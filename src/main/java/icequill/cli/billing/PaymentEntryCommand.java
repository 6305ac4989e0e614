package icequill.cli.billing;

import icequill.answer.PaymentSheet;
import icequill.cli.terminal.BookCommand;
import icequill.office.billing.PaymentOffice;
import icequill.problem.Validated;
import java.time.Clock;

/** What all commands share on payments. */
abstract class PaymentEntryCommand extends BookCommand {

    PaymentEntryCommand(Clock clock) {
        super(clock);
    }

    final PaymentOffice payments() {
        return PaymentOffice.of(folder(), clock());
    }

    final int showPayment(Validated<PaymentSheet> payment) {
        return show(payment, sheet -> sheet.lines().forEach(this::print));
    }
}
