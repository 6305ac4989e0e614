package icequill.cli.book;

import icequill.cli.terminal.BillStateOption;
import icequill.cli.terminal.FoundCommand;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds issued papers. */
@Command(name = "find", mixinStandardHelpOptions = true, description = "Finds papers that the book issued, the newest first: by number, customer, store, address, purchase order, serial, amount (301.13) or date (2026-05-13), by month, kind, state, store or who called. Everything that is asked for has to fit.", footerHeading = "%nExamples:%n", footer = {
        "  icequill find pennon wharf", "  icequill find PO-7731", "  icequill find 301.13 2026-05-13",
        "  icequill find --month 2026-05 --kind invoice --state open", "  icequill find --store 0412 --caller castell",
        "  icequill find 12               number 12 of any series, and the like"})
public final class FindCommand extends FoundCommand {

    @Option(names = "--kind", paramLabel = "KIND", split = ",", description = "Only papers of these kinds: invoice, credit-note, quote, maintenance-quote, repair-quote.")
    private List<String> kinds = new ArrayList<>();

    @Mixin
    private BillStateOption state = new BillStateOption();

    public FindCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected List<String> kinds() {
        return kinds;
    }

    @Override
    protected Optional<String> state() {
        return state.state();
    }
}
