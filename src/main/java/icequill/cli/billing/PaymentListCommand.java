package icequill.cli.billing;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists payments. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the payments of the shop's book, by day; money that went back is negative.", footerHeading = "%nExamples:%n", footer = {
        "  icequill payment list",
        "  icequill payment list fernhill"})
public final class PaymentListCommand extends PaymentEntryCommand {

    @Parameters(paramLabel = "TEXT", arity = "0..1", description = "Only those that have this text in one of the columns.")
    private String text = "";

    public PaymentListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return list(payments().list(text));
    }
}
