package icequill.cli.register;

import icequill.answer.EntrySheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.register.RegisterLists;
import icequill.office.register.RegisterOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.function.Supplier;

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

    /** Where nothing is given to change, that is told: what a file says is not taken in here. */
    final int changed(boolean isGiven, Supplier<Validated<EntrySheet>> change) {
        return stored(isGiven
                ? change.get()
                : Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "nothing is given to change",
                        "an option such as --notes; what a file says is taken in by: icequill import FILE")));
    }

    final int showEntry(Validated<EntrySheet> entry) {
        return show(entry, sheet -> print(Table.of(sheet.rows(), 2)));
    }
}
