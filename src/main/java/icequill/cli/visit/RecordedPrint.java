package icequill.cli.visit;

import icequill.answer.RecordedVisit;
import icequill.cli.terminal.Printout;

/** What the screen says of a visit that was taken into the book, and what comes next. */
final class RecordedPrint {

    private RecordedPrint() {
    }

    static void print(RecordedVisit visit, Printout printout) {
        printout.out().println("Recorded " + visit.summary());
        visit.notices().forEach(notice -> printout.err().println("Note: " + notice.text()));
        printout.out().println(visit.isPlanned()
                ? "Next: icequill visit worksheet " + visit.visit()
                : "Next: icequill invoice issue " + visit.visit());
    }
}
