package icequill.cli.mail;

import icequill.answer.mail.MailSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.mail.MailOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Mixin;

/** What all commands share that are about one mail. */
abstract class MailStepCommand extends BookCommand {

    @Mixin
    private MailName mail = new MailName();

    MailStepCommand(Clock clock) {
        super(clock);
    }

    /** The mail as it is then. */
    abstract Validated<MailSheet> sheet(MailOffice office, String id);

    @Override
    public final Integer call() {
        return show(sheet(MailOffice.of(folder(), clock()), mail.id()), this::tell);
    }

    private void tell(MailSheet sheet) {
        print(Table.of(sheet.rows(), 2));
        sheet.copy().ifPresent(copy -> {
            print("");
            printLines(copy.text().lines());
        });
        sheet.problems().forEach(problem -> printout().err().println("Note: " + problem.text()));
    }
}
