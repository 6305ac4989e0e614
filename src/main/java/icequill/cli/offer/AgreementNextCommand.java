package icequill.cli.offer;

import icequill.answer.NextInstallment;
import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.DayOption;
import icequill.office.billing.IssueOffice;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says which installment of an agreement is to be billed. */
@Command(name = "next", mixinStandardHelpOptions = true, description = "Says which installment of an agreement is to be billed next.", footerHeading = "%nExample:%n", footer = "  icequill agreement next crumb-lane-bakery")
public final class AgreementNextCommand extends BookCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Mixin
    private DayOption day = new DayOption();

    public AgreementNextCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folderOf(Path.of(agreement.text())));
        return show(IssueOffice.of(folder, clock()).nextInstallment(form(agreement.text()),
                day.in(folder, clock())), this::tell);
    }

    private void tell(NextInstallment next) {
        print(next.installment().map(one -> "Next of " + next.agreement() + ": " + one.text()
                + "\nTo bill it: icequill invoice issue " + agreement.text() + " --installment " + one.number())
                .orElse("All installments of " + next.agreement() + " are billed."));
    }
}
