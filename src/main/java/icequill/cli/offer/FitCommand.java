package icequill.cli.offer;

import icequill.answer.FitResult;
import icequill.answer.WrittenPaper;
import icequill.cli.terminal.PaperCommand;
import icequill.cli.terminal.Printout;
import icequill.office.FitOffice;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.time.Clock;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Fits how soon dirt stops machines to the shop's own records. */
@Command(name = "fit", mixinStandardHelpOptions = true, description = "Fits how soon dirt stops machines to the visits of your book, or to a table of other records (columns machine, kind, side, from, until, ended), prints lines for pricing/forecast.yaml, and writes a plot as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill fit",
        "  icequill fit runs.csv",
        "  icequill fit runs.csv --json",
        "", "One line a run, from a cleaning or brushing on:",
        "  machine,kind,side,from,until,ended",
        "  proof-room,bakery,water,2025-03-03,2025-09-20,stopped",
        "  proof-room,bakery,condenser,2025-03-03,2025-06-02,cleaned",
        "ended: stopped, restarted (the call cleaned nothing), cleaned, or running.",
        "A day may be a month (2025-03). Leave from empty where nobody knows it.",
        "Columns you may add: watched (the day from which you know of stops), and",
        "worse (yeast, heat, grease, hard-water: what makes dirt work faster there)."})
public final class FitCommand extends PaperCommand {

    /** Whence the shop folder is looked for where there is no table. */
    private static final String HERE = ".";

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "The table of your records. Default: the visits of the book.")
    private @Nullable String table;

    public FitCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected String named() {
        return Objects.requireNonNullElse(table, HERE);
    }

    @Override
    public Integer call() {
        Printout printout = printout();
        return printout.show(fit(office(), paperOptions()), result -> print(result, printout));
    }

    private static void print(FitResult result, Printout printout) {
        if (printout.json()) {
            printout.answer(result);
            return;
        }
        result.lines().forEach(printout.out()::println);
        result.paper().stream().flatMap(paper -> paper.files().stream())
                .forEach(written -> printout.out().println("Wrote " + written));
    }

    @Override
    public Validated<WrittenPaper> write(Office office, FormName from, PaperOptions options) {
        return fit(office, options).map(result -> result.paper().orElseThrow());
    }

    private Validated<FitResult> fit(Office office, PaperOptions options) {
        FitOffice fits = office.fits();
        return (table == null ? fits.book(options) : fits.table(file(), options))
                .then(fit -> fits.write(fit, options));
    }
}
