package icequill.cli.offer;

import icequill.answer.ComparisonResult;
import icequill.answer.WrittenPaper;
import icequill.cli.terminal.PaperCommand;
import icequill.office.Office;
import icequill.outlook.LookAhead;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a comparison of all ways of having machines looked after. */
@Command(name = "compare", mixinStandardHelpOptions = true, description = "Writes what to expect of paying per call, of cleanings booked singly and of each plan, from a request for a maintenance quote, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill compare crumb-lane-plan",
        "  icequill compare crumb-lane-plan --date 2026-05-14 --lang es --html",
        "  icequill compare crumb-lane-plan --years 5 --interval 4 --json",
        "  icequill compare crumb-lane-plan --owner"})
public final class CompareCommand extends PaperCommand {

    @Parameters(paramLabel = "REQUEST", description = "The maintenance request: its id in the book, or a file.")
    private String request = "";

    @Option(names = "--years", paramLabel = "N", description = "Look ahead so many years, from 1 to 10. Default: as pricing/ says.")
    private @Nullable Integer years;

    @Option(names = "--interval", paramLabel = "K", description = "Also compare full cleanings every K months, each ordered by itself.")
    private @Nullable Integer interval;

    @Option(names = "--owner", description = "Write the owner's page instead: exact figures, margin, and which guess moves the answer most. For the owner's eyes only.")
    private boolean owner;

    public CompareCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected String named() {
        return request;
    }

    @Override
    public Integer call() {
        return printout().json() && !owner ? json() : super.call();
    }

    private int json() {
        return printout().show(compared(office(), from(), paperOptions()),
                compared -> printout().answer(compared));
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return owner
                ? office.plans().ownersOutlook(from, options, asked())
                : compared(office, from, options).map(ComparisonResult::paper);
    }

    private Validated<ComparisonResult> compared(Office office, FormName from, PaperOptions options) {
        return office.plans().compare(from, options, asked());
    }

    private LookAhead asked() {
        return new LookAhead(Optional.ofNullable(years), Optional.ofNullable(interval));
    }
}
