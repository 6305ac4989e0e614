package icequill.cli.terminal;

import icequill.answer.PriceSheet;
import java.util.ArrayList;
import java.util.List;

/** A price as a table of text. */
public final class PriceTable {

    private static final int TEXT_COLUMNS = 2;

    private PriceTable() {
    }

    /** Prints a price, and beside it what should be known about it. */
    public static void print(PriceSheet sheet, boolean how, boolean owner, Printout printout) {
        if (printout.json()) {
            printout.answer(sheet.data(owner));
        } else {
            printout.out().println(text(sheet, how, owner));
        }
        sheet.notices().forEach(notice -> printout.err().println("Note: " + notice.text()));
    }

    /** What the screen shows of it. */
    public static String text(PriceSheet sheet, boolean how, boolean owner) {
        List<String> parts = new ArrayList<>();
        parts.add(Table.of(sheet.head(owner), sheet.rows(owner), TEXT_COLUMNS));
        parts.add("");
        parts.add(Table.of(sheet.sums(owner), 1));
        if (how) {
            parts.add("");
            parts.addAll(sheet.explanations(owner));
        }
        return String.join(System.lineSeparator(), parts);
    }
}
