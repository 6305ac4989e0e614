package icequill.ledger.entries;

import java.time.Instant;
import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * That a recorded visit is not to be billed, or a payment not to be counted, and why.
 *
 * @param reason empty where its customer was forgotten since
 */
public record Withdrawal(@ColumnName("withdrawn_at") Instant at, String reason) {

    /** What is said when somebody wants to work on what was withdrawn. */
    public String told(String kind, String id) {
        return kind + " \"" + id + "\" was withdrawn: "
                + (reason.isEmpty() ? "its customer was forgotten, and the reason with him" : reason);
    }
}
