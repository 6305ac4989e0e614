package icequill.cli.offer;

import icequill.answer.agreement.TransferSheet;
import icequill.office.agreement.TransferWish;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Gives the rest of an agreement to a new owner. */
@Command(name = "transfer", mixinStandardHelpOptions = true, description = "Gives the rest of an agreement to a new owner: it ends for the former one the day before, and goes on as an agreement of the new one to the end of the term, at the same price, with the same visits and what is left of included calls. Shows what goes back and what the new one is asked for; with --yes it is done, the sites are the new owner's from that day on, and credit notes are issued in the same step. The paper for the new owner is then: icequill agreement print.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement transfer A-2026-004 --to marlow-cafe --on 2026-09-15",
        "  icequill agreement transfer A-2026-004 --to marlow-cafe --on 2026-09-15 --order PO-31 --agreed-by \"M. Marlow\" --yes"})
public final class AgreementTransferCommand extends AgreementStepCommand {

    @Option(names = "--to", required = true, paramLabel = "CUSTOMER", description = "The new owner, a customer of the book by his id.")
    private String to = "";

    @Option(names = "--on", required = true, paramLabel = "DAY", description = "The first day of the new owner, up to today; within the term, after its first day.")
    private @Nullable LocalDate from;

    @Option(names = "--order", paramLabel = "NUMBER", description = "The new owner's standing purchase order; that of the former one is not taken over.")
    private @Nullable String order;

    @Option(names = "--agreed-by", paramLabel = "NAME", description = "Who agreed to it.")
    private @Nullable String agreed;

    @Option(names = "--words", paramLabel = "TEXT", description = "What was said of it.")
    private @Nullable String words;

    public AgreementTransferCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return step((office, agreement, today, isTrial) -> office.transfer(agreement,
                new TransferWish(to, from == null ? today : from, Optional.ofNullable(order),
                        Optional.ofNullable(agreed), Optional.ofNullable(words),
                        Optional.empty(), isTrial)),
                TransferSheet::lines, "nothing was transferred yet");
    }
}
