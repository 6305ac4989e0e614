package icequill.cli.offer;

import icequill.answer.RenewalAdvice;
import icequill.answer.WrittenPaper;
import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.MailOption;
import icequill.cli.terminal.PaperCommand;
import icequill.cli.terminal.Printout;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a renewal notice, and says when to send it. */
@Command(name = "renewal", mixinStandardHelpOptions = true, description = "Writes the notice that an agreement will renew itself as PDF into the shop folder's papers/, and says when and how to send it by the laws on record. Check with your adviser.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement renewal crumb-lane-bakery --date 2027-03-05",
        "  icequill agreement renewal crumb-lane-bakery --date 2027-04-20 --late \"our letter of March came back\""})
public final class AgreementRenewalCommand extends PaperCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Option(names = "--late", paramLabel = "REASON", description = "Print a notice that does not come in time: why, for the customer. It makes no claim that the agreement renews.")
    private @Nullable String late;

    @Mixin
    private MailOption mail = new MailOption();

    public AgreementRenewalCommand(Clock clock) {
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
    public Integer call() {
        Printout printout = printout();
        return printout.show(office().plans().renewal(from(), paperOptions(), Optional.ofNullable(late)),
                advice -> print(advice, printout));
    }

    private static void print(RenewalAdvice advice, Printout printout) {
        if (printout.json()) {
            printout.answer(advice);
            return;
        }
        advice.paper().files().forEach(written -> printout.out().println("Wrote " + written));
        printout.out().println(advice.paper().summary());
        tellMail(advice.paper(), printout);
        advice.sentences().forEach(printout.out()::println);
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return office.plans().renewal(from, options, Optional.ofNullable(late)).map(RenewalAdvice::paper);
    }
}
