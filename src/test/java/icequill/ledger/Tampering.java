package icequill.ledger;

import icequill.ledger.papers.PaperRows;
import icequill.ledger.papers.Seal;
import icequill.ledger.papers.Series;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** What somebody does who means to change issued papers and knows SQL. */
public final class Tampering {

    /** Of a book that is a file. */
    public static final List<String> TRIGGERS = List.of("paper_never_changes", "paper_never_goes",
            "paper_line_never_changes",
            "paper_line_never_goes", "visit_withdrawn_never_changes", "visit_withdrawn_never_goes",
            "paper_backdated_never_changes", "paper_backdated_never_goes");

    private Tampering() {
    }

    /** Makes all seals of a series fit its rows again. */
    public static void reckonAnew(Handle handle, Series series, int papers) {
        String seal = Seal.NONE;
        for (int position = 1; position <= papers; position++) {
            String number = series.number(position);
            handle.execute("UPDATE paper SET previous_seal = ? WHERE number = ?", seal, number);
            seal = PaperRows.byNumber(handle, number).orElseThrow().seal();
            handle.execute("UPDATE paper SET seal = ? WHERE number = ?", seal, number);
        }
        handle.execute("UPDATE series SET head = ? WHERE kind = ?", seal, series.kind().name());
    }

    /** Takes away what guards issued papers. */
    public static void unguard(Database database, Handle handle) {
        switch (database) {
        case SQLITE -> TRIGGERS.forEach(trigger -> handle.execute("DROP TRIGGER " + trigger));
        case POSTGRESQL -> {
            handle.execute("DROP TRIGGER paper_never_changes ON paper");
            handle.execute("DROP TRIGGER paper_line_never_changes ON paper_line");
            handle.execute("DROP TRIGGER visit_withdrawn_never_changes ON visit_withdrawn");
            handle.execute("DROP TRIGGER visit_withdrawn_never_goes ON visit_withdrawn");
            handle.execute("DROP TRIGGER paper_backdated_never_changes ON paper_backdated");
        }
        }
    }
}
