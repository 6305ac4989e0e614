package icequill.cli.book;

import icequill.answer.ProblemReport;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.Printout;
import icequill.cli.terminal.ShopOptions;
import icequill.office.care.CheckShop;
import icequill.problem.Problem;
import icequill.shop.ShopDay;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Reads everything in a shop folder and lists every problem. */
@Command(name = "check", mixinStandardHelpOptions = true, description = "Reads everything in the shop folder, prices every visit, and lists every problem.", footerHeading = "%nExamples:%n", footer = {
        "  icequill check --shop my-shop"})
public final class CheckCommand implements Callable<Integer> {

    private final Clock clock;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ShopOptions options = new ShopOptions();

    public CheckCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Printout printout = Printout.of(spec.commandLine(), options.json());
        CheckShop.Report report = CheckShop.check(printout.pricing(options.folder()),
                ShopDay.today(options.folder(), clock));
        List<Problem> problems = report.problems();
        if (!problems.isEmpty()) {
            return printout.problems(problems);
        }
        String well = "All is well: " + report.sites() + " sites, " + report.forms()
                + " forms of work to come or to bill.";
        if (options.json()) {
            printout.answer(new ProblemReport(problems));
        } else {
            printout.out().println(well);
        }
        return ExitCode.OK.status();
    }
}
