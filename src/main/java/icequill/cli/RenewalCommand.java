package icequill.cli;

import icequill.office.JsonText;
import icequill.office.Office;
import icequill.office.RenewalAdvice;
import icequill.office.WrittenPaper;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Writes a renewal notice, and says when to send it. */
@Command(name = "renewal", mixinStandardHelpOptions = true, description = "Writes the notice that an agreement will renew itself as PDF into the shop folder's papers/, and says when and how to send it by the laws on record. Check with your adviser.", footerHeading = "%nExamples:%n", footer = {
        "  icequill renewal agreements/crumb-lane-bakery.yaml",
        "  icequill renewal agreements/crumb-lane-bakery.yaml --date 2026-10-05 --json"})
final class RenewalCommand extends PaperCommand {

    RenewalCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Printout printout = printout();
        return printout.show(office().plans().renewal(from(), wish()), advice -> print(advice, printout));
    }

    private static void print(RenewalAdvice advice, Printout printout) {
        if (printout.json()) {
            printout.out().println(JsonText.of(advice.json()));
            return;
        }
        advice.paper().files().forEach(written -> printout.out().println("Wrote " + written));
        printout.out().println(advice.paper().summary());
        advice.sentences().forEach(printout.out()::println);
    }

    @Override
    Checked<WrittenPaper> write(Office office, Path from, Office.Wish wish) {
        return office.plans().renewal(from, wish).map(RenewalAdvice::paper);
    }
}
