package icequill.cli.offer;

import icequill.answer.PlanEarnings;
import icequill.cli.terminal.Printout;
import icequill.cli.terminal.Table;

/** What plans cost and earn as a table of text. */
final class EarningsTable {

    private static final int TEXT_COLUMNS = 2;

    private EarningsTable() {
    }

    static void print(PlanEarnings earnings, Printout printout) {
        if (printout.json()) {
            printout.answer(earnings);
            return;
        }
        printout.out().println(Table.of(earnings.heads(), earnings.rows(), TEXT_COLUMNS));
        printout.out().println();
        earnings.movers().forEach(printout.out()::println);
        printout.out().println();
        earnings.explanations().forEach(printout.out()::println);
    }
}
