package icequill.ledger;

import icequill.problem.Problem;
import java.util.List;
import java.util.stream.Stream;

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

    /** The same with further findings. */
    AuditReport and(List<Problem> more) {
        return new AuditReport(papers, heads, Stream.concat(findings.stream(), more.stream()).toList());
    }

    public boolean isClean() {
        return findings.isEmpty();
    }
}
