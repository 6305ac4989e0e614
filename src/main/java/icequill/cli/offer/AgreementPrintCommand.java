package icequill.cli.offer;

import icequill.answer.WrittenPaper;
import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.MailOption;
import icequill.cli.terminal.PaperCommand;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes an agreement. */
@Command(name = "print", mixinStandardHelpOptions = true, description = "Writes a maintenance agreement, a summary of one page first, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement print crumb-lane-bakery",
        "  icequill agreement print crumb-lane-bakery --date 2026-05-20 --lang es"})
public final class AgreementPrintCommand extends PaperCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Mixin
    private MailOption mail = new MailOption();

    public AgreementPrintCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected boolean isMailed() {
        return mail.isSet();
    }

    @Override
    protected String named() {
        return agreement.text();
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return office.plans().agreement(from, options);
    }
}
