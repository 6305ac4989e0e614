package icequill.cli.billing;

import icequill.cli.terminal.BillStateOption;
import icequill.cli.terminal.FoundCommand;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists invoices. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists issued invoices, the newest first. Everything that is asked for has to fit.", footerHeading = "%nExamples:%n", footer = {
        "  icequill invoice list --month 2026-05 --state open", "  icequill invoice list fernhill"})
public final class InvoiceListCommand extends FoundCommand {

    @Mixin
    private BillStateOption state = new BillStateOption();

    public InvoiceListCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected List<String> kinds() {
        return List.of("invoice");
    }

    @Override
    protected Optional<String> state() {
        return state.state();
    }
}
