package icequill.cli.offer;

import icequill.answer.NextInstallment;
import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.BookCommand;
import icequill.office.billing.IssueOffice;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says which installment of an agreement is to be billed. */
@Command(name = "next", mixinStandardHelpOptions = true, description = "Says which installment of an agreement is to be billed next.", footerHeading = "%nExample:%n", footer = "  icequill agreement next crumb-lane-bakery")
public final class AgreementNextCommand extends BookCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Option(names = "--date", paramLabel = "D", description = "As it stands on this day, such as 2026-05-14. Default: today.")
    private @Nullable LocalDate date;

    public AgreementNextCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folderOf(Path.of(agreement.text())));
        return show(IssueOffice.of(folder, clock()).nextInstallment(form(agreement.text()),
                date == null ? ShopDay.today(folder, clock()) : date), this::tell);
    }

    private void tell(NextInstallment next) {
        print(next.installment().map(one -> "Next of " + next.agreement() + ": " + one.text()
                + "\nTo bill it: icequill invoice issue " + agreement.text() + " --installment " + one.number())
                .orElse("All installments of " + next.agreement() + " are billed."));
    }
}
