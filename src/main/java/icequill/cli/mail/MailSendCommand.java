package icequill.cli.mail;

import icequill.answer.mail.MailEntry;
import icequill.answer.mail.MailList;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExitCode;
import icequill.explain.ConstantKey;
import icequill.office.mail.SendingOffice;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Sends mails. */
@Command(name = "send", mixinStandardHelpOptions = true, description = "Sends the mails that wait, by the server that shop.yaml sets under mail; without one lays them into the folder outbox, for you to send. What was put off is tried again when its time has come. Run it as often as you like: no mail goes out twice.", footerHeading = "%nExamples:%n", footer = {
        "  icequill mail send INV-2026-00008.m1     one",
        "  icequill mail send                       all that may go now"})
public final class MailSendCommand extends BookCommand {

    @Parameters(arity = "0..*", paramLabel = "MAIL", description = "Mails; all that may go now if none is named.")
    private List<String> mails = List.of();

    public MailSendCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        SendingOffice office = SendingOffice.of(folder(), clock());
        Validated<MailList> sent = (mails.isEmpty() ? office.due() : Validated.valid(mails))
                .then(ids -> office.send(ids, this::tell));
        return sent.found().map(this::end).orElseGet(() -> printout().problems(sent.problems()));
    }

    private boolean tell(MailEntry mail) {
        if (!printout().json()) {
            print(mail.mail() + " " + ConstantKey.words(mail.state().name())
                    + mail.why().map(why -> ": " + why).orElse(""));
        }
        return true;
    }

    private int end(MailList sent) {
        if (printout().json()) {
            printout().answer(sent);
        } else {
            print(sent.mails().isEmpty() ? "None." : "Mails: " + sent.mails().size() + ".");
        }
        return printout().done(ExitCode.OK.status(), sent.problems());
    }
}
