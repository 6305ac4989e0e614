package icequill.cli.billing;

import icequill.answer.ChangeCredit;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.DayOption;
import icequill.cli.terminal.PaperName;
import icequill.money.Amounts;
import icequill.office.billing.CreditOffice;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says what the changes of an agreement give back of an installment. */
@Command(name = "propose", mixinStandardHelpOptions = true, description = "Says how much the changes of an agreement give back of one of its installments, and gives nothing back itself.", footerHeading = "%nExample:%n", footer = "  icequill credit propose INV-2026-00018 --changes hotel-fernhill")
public final class CreditProposeCommand extends BookCommand {

    @Mixin
    private PaperName invoice = new PaperName();

    @Option(names = "--changes", required = true, paramLabel = "AGREEMENT", description = "The agreement with its changes: its id or number in the book, or a file.")
    private String agreement = "";

    @Mixin
    private DayOption day = new DayOption();

    public CreditProposeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(CreditOffice.of(folder(), clock()).byChanges(invoice.text(), form(agreement),
                day.in(folder(), clock())), this::tell);
    }

    private void tell(ChangeCredit credit) {
        print(credit.text());
        credit.lines().stream().filter(line -> line.amount().isPositive())
                .forEach(line -> print("To give it back: icequill credit issue " + credit.invoice()
                        + (credit.lines().size() == 1 ? "" : " --lines " + line.line()) + " --amount "
                        + Amounts.plain(line.amount()) + " --reason \"...\""));
    }
}
