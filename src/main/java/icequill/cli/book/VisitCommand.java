package icequill.cli.book;

import icequill.answer.RecordedVisit;
import icequill.answer.WithdrawnVisit;
import icequill.cli.terminal.BookCommand;
import icequill.office.billing.IssueOffice;
import icequill.shop.FormName;
import java.nio.file.Path;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Records a visit in the book, or takes one back; lists them by its subcommand. */
@Command(name = "visit", mixinStandardHelpOptions = true, subcommands = VisitListCommand.class, description = "Records a finished visit in the shop's book, priced, to be billed by: icequill issue. Recorded again before it is billed, it takes the place of the first. A visit that is not to be billed is withdrawn; the book keeps it, and why. All that the book has: icequill visit list.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit today.yaml", "  icequill visit today.yaml --json",
        "  icequill visit list --month 2026-05 --state done",
        "  icequill visit --withdraw late-call-copy --reason \"The same visit as late-call.\""})
public final class VisitCommand extends BookCommand {

    @ArgGroup(multiplicity = "0..1")
    private @Nullable What what;

    @Option(names = "--reason", paramLabel = "TEXT", description = "With --withdraw: why.")
    private String reason = "";

    /** What is recorded or withdrawn. */
    static final class What {

        @Parameters(paramLabel = "FILE", description = "The visit's file. Its name is what the visit is called in the book.")
        private @Nullable Path file;

        @Option(names = "--withdraw", paramLabel = "VISIT", description = "Take back a recorded visit that is not billed.")
        private @Nullable String withdraw;
    }

    public VisitCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        if (what == null) {
            throw new ParameterException(spec().commandLine(),
                    "what to do is missing: FILE, --withdraw VISIT, or: list");
        }
        return what.file == null ? withdraw(what.withdraw == null ? "" : what.withdraw) : record(what.file);
    }

    private int record(Path file) {
        return show(IssueOffice.of(pricing(folderOf(file)), clock()).record(FormName.file(file(file))),
                this::tell);
    }

    private int withdraw(String visit) {
        return show(IssueOffice.of(folder(), clock()).withdraw(visit, reason),
                this::tell);
    }

    private void tell(RecordedVisit visit) {
        print("Recorded " + visit.summary());
        visit.notices().forEach(notice -> printout().err().println("Note: " + notice.text()));
        print(visit.isPlanned()
                ? "Next: icequill worksheet " + visit.visit()
                : "Next: icequill issue " + visit.visit());
    }

    private void tell(WithdrawnVisit withdrawn) {
        print("Withdrawn: " + withdrawn.visit() + " at " + withdrawn.site() + " on " + withdrawn.day() + ": "
                + withdrawn.reason());
    }
}
