package icequill.cli.offer;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.cli.terminal.Table;
import icequill.office.agreement.AgreementLifeOffice;
import icequill.problem.Problem;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the book's agreements. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists agreements: where they stand, the next installment to be billed, the next visit of the calendar, and what is to be done about the renewal.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement list", "  icequill agreement list hotel", "  icequill agreement list --all"})
public final class AgreementListCommand extends BookCommand {

    @Parameters(paramLabel = "TEXT", arity = "0..1", description = "Only those with these words in number, id, customer or site.")
    private String text = "";

    @Option(names = "--all", description = "Those too that are over.")
    private boolean all;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public AgreementListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(AgreementLifeOffice.of(pricing(folder()), clock(), reader.language()).list(text, all), list -> {
            print(list.agreements().isEmpty()
                    ? "None."
                    : Table.of(list.head(), list.rows(), list.head().size()));
            printLines(list.problems().stream().map(Problem::text));
        });
    }
}
