package icequill.cli.offer;

import icequill.answer.BrushingResult;
import icequill.answer.WrittenPaper;
import icequill.cli.terminal.PaperCommand;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the brushing sheet of one site. */
@Command(name = "brushing", mixinStandardHelpOptions = true, description = "Writes the sheet by which a customer brushes his own condensers, and what that costs beside a visit, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill brushing crumb-lane-bakery",
        "  icequill brushing crumb-lane-bakery --lang es --html",
        "  icequill brushing crumb-lane-bakery --both",
        "  icequill brushing crumb-lane-bakery --json"})
public final class BrushingCommand extends PaperCommand {

    @Parameters(paramLabel = "REQUEST", description = "The brushing request: its id in the book, or a file.")
    private String request = "";

    @Option(names = "--both", description = "Print both languages, one on each side of the sheet.")
    private boolean both;

    public BrushingCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected String named() {
        return request;
    }

    @Override
    public Integer call() {
        return printout().json() ? json() : super.call();
    }

    private int json() {
        return printout().show(brushed(office(), from(), paperOptions()),
                brushed -> printout().answer(brushed));
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return brushed(office, from, options).map(BrushingResult::paper);
    }

    private Validated<BrushingResult> brushed(Office office, FormName from, PaperOptions options) {
        return both ? office.brushingPair(from, options) : office.brushing(from, options);
    }
}
