package icequill.cli.register;

import icequill.answer.EntrySheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
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

    final int stored(Validated<EntrySheet> entry) {
        return show(entry, sheet -> print("Stored " + sheet.kind() + " " + sheet.id()));
    }

    final int showEntry(Validated<EntrySheet> entry) {
        return show(entry, sheet -> print(Table.of(sheet.rows(), 2)));
    }
}
