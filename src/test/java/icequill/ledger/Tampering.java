package icequill.ledger;

import icequill.ledger.papers.PaperRows;
import icequill.ledger.papers.Series;
import icequill.ledger.store.Seal;
import icequill.ledger.trail.TrailRow;
import icequill.ledger.trail.TrailRows;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** What somebody does who means to change issued papers, or the trail, and knows SQL. */
public final class Tampering {

    /** Of a book that is a file. */
    public static final List<String> TRIGGERS = List.of("paper_never_changes", "paper_never_goes",
            "paper_line_never_changes",
            "paper_line_never_goes", "paper_pdf_never_changes", "paper_pdf_never_goes", "visit_withdrawn_never_changes",
            "visit_withdrawn_never_goes",
            "paper_backdated_never_changes", "paper_backdated_never_goes", "trail_never_changes", "trail_never_goes",
            "trail_value_never_changes", "trail_value_only_forgotten", "rates_version_never_changes",
            "rates_version_never_goes", "rates_file_never_changes", "rates_file_never_goes",
            "rates_adopted_never_changes", "rates_adopted_never_goes", "payment_never_changes", "payment_never_goes",
            "payment_share_never_changes", "payment_share_never_goes", "payment_withdrawn_never_changes",
            "payment_withdrawn_never_goes", "further_visit_never_changes", "further_visit_never_goes",
            "life_step_never_changes", "life_step_never_goes", "mail_file_never_changes", "mail_file_only_forgotten");

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

    /** Makes all seals of the trail fit its rows again, and each row what stands beside it. */
    public static void reckonTrailAnew(Handle handle) {
        String[] seal = {Seal.NONE};
        List<TrailRow> rows = new ArrayList<>();
        TrailRows.each(handle, sealed -> rows.add(sealed.row()));
        for (TrailRow row : rows) {
            TrailRow anew = new TrailRow(row.number(), row.notedAt(), row.who(), row.office(), row.kind(), row.entry(),
                    row.event(), fitting(row.before()), fitting(row.after()), seal[0]);
            seal[0] = anew.seal();
            handle.createUpdate(
                    "UPDATE trail SET before_hash = :before, after_hash = :after, previous_seal = :previous,"
                            + " seal = :seal WHERE number = :number")
                    .bind("before", anew.before().hash())
                    .bind("after", anew.after().hash()).bind("previous", anew.previousSeal()).bind("seal", seal[0])
                    .bind("number", row.number()).execute();
        }
    }

    private static TrailRow.Side fitting(TrailRow.Side side) {
        return new TrailRow.Side(side.owner(), side.value().map(TrailRow.Value::hash).or(side::hash), side.value());
    }

    /** Takes away what guards issued papers. */
    public static void unguard(Database database, Handle handle) {
        switch (database) {
        case SQLITE -> TRIGGERS.forEach(trigger -> handle.execute("DROP TRIGGER " + trigger));
        case POSTGRESQL -> {
            handle.execute("DROP TRIGGER paper_never_changes ON paper");
            handle.execute("DROP TRIGGER paper_line_never_changes ON paper_line");
            handle.execute("DROP TRIGGER paper_pdf_never_changes ON paper_pdf");
            handle.execute("ALTER TABLE paper_pdf DROP CONSTRAINT paper_pdf_paper_id_fkey");
            handle.execute("DROP TRIGGER visit_withdrawn_never_changes ON visit_withdrawn");
            handle.execute("DROP TRIGGER visit_withdrawn_never_goes ON visit_withdrawn");
            handle.execute("DROP TRIGGER paper_backdated_never_changes ON paper_backdated");
            handle.execute("DROP TRIGGER trail_never_changes ON trail");
            handle.execute("DROP TRIGGER trail_value_never_changes ON trail_value");
            handle.execute("DROP TRIGGER trail_value_only_forgotten ON trail_value");
            handle.execute("DROP TRIGGER payment_never_changes ON payment");
            handle.execute("DROP TRIGGER payment_share_never_changes ON payment_share");
            handle.execute("DROP TRIGGER life_step_never_changes ON life_step");
            handle.execute("DROP TRIGGER life_step_never_goes ON life_step");
        }
        }
    }
}
