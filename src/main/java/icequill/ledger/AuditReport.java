package icequill.ledger;

import icequill.problem.Problem;
import java.util.List;

/**
 * What was found when the whole book was gone through.
 *
 * @param papers how many were looked at
 * @param heads of all series, by kind, office and year
 * @param findings what is wrong; empty when all is in order
 */
public record AuditReport(long papers, List<SeriesHead> heads, List<Problem> findings) {

    public AuditReport {
        heads = List.copyOf(heads);
        findings = List.copyOf(findings);
    }

    public boolean isClean() {
        return findings.isEmpty();
    }
}
