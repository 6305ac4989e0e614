package icequill.cli.entry;

import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists payments. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the payments of the shop's book, by day; money that went back is negative.")
public final class PaymentListCommand extends EntryCommand {

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
