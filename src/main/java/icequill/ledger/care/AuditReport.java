package icequill.ledger.care;

import icequill.ledger.papers.SeriesHead;
import icequill.ledger.trail.TrailHead;
import icequill.problem.Problem;
import java.util.List;
import java.util.stream.Stream;

/**
 * What was found when the whole book was gone through.
 *
 * @param papers how many were looked at
 * @param heads of all series, by kind, office and year
 * @param trail how far it has come
 * @param findings what is wrong; empty when all is in order
 * @param elsewhere series of other offices whose files were not looked at, since they lie in folders of theirs, and how many papers
 */
public record AuditReport(long papers, List<SeriesHead> heads, TrailHead trail, List<Problem> findings,
        List<String> elsewhere) {

    public AuditReport {
        heads = List.copyOf(heads);
        findings = List.copyOf(findings);
        elsewhere = List.copyOf(elsewhere);
    }

    /** The same with further findings. */
    public AuditReport and(List<Problem> more) {
        return with(Stream.concat(findings.stream(), more.stream()));
    }

    /** The same with other findings before it. */
    public AuditReport after(List<Problem> before) {
        return with(Stream.concat(before.stream(), findings.stream()));
    }

    private AuditReport with(Stream<Problem> all) {
        return new AuditReport(papers, heads, trail, all.toList(), elsewhere);
    }
}
