package icequill.cli.billing;

import icequill.answer.rates.Rework;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.PaperName;
import icequill.office.care.ReworkOffice;
import icequill.problem.Validated;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Works an issued paper out again. */
@Command(name = "rework", mixinStandardHelpOptions = true, description = "Works a paper out again by the rates of then, from what the book held then, and says whether it comes to what was issued. Nothing is written.", footerHeading = "%nExample:%n", footer = "  icequill paper rework INV-2026-00012")
public final class PaperReworkCommand extends BookCommand {

    @Mixin
    private PaperName paper = new PaperName();

    public PaperReworkCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Validated<Rework> result = ReworkOffice.of(folder(), clock()).rework(paper.text());
        int status = show(result, again -> printLines(again.lines()));
        return result.found().filter(again -> !again.isSame()).isPresent() ? ExitCode.PROBLEMS.status() : status;
    }
}
