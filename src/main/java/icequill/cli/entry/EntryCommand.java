package icequill.cli.entry;

import icequill.answer.EntrySheet;
import icequill.answer.Listing;
import icequill.answer.PaymentSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.billing.PaymentOffice;
import icequill.office.register.RegisterLists;
import icequill.office.register.RegisterOffice;
import icequill.problem.Validated;
import java.time.Clock;

/** What all commands share on customers, sites and machines. */
public abstract class EntryCommand extends BookCommand {

    public EntryCommand(Clock clock) {
        super(clock);
    }

    final RegisterOffice office() {
        return RegisterOffice.of(folder(), clock());
    }

    final RegisterLists lists() {
        return RegisterLists.of(folder(), clock());
    }

    final PaymentOffice payments() {
        return PaymentOffice.of(folder(), clock());
    }

    final int showPayment(Validated<PaymentSheet> payment) {
        return show(payment, sheet -> sheet.lines().forEach(this::print));
    }

    final int stored(Validated<EntrySheet> entry) {
        return show(entry, sheet -> print("Stored " + sheet.kind() + " " + sheet.id()));
    }

    final int showEntry(Validated<EntrySheet> entry) {
        return show(entry, sheet -> print(Table.of(sheet.rows(), 2)));
    }

    final <T extends Listing> int list(Validated<T> listing) {
        return show(listing, found -> print(found.rows().isEmpty()
                ? "None."
                : Table.of(found.head(), found.rows(), found.head().size())));
    }
}
