package icequill.ledger.care;

import icequill.ledger.papers.SeriesHead;
import icequill.ledger.trail.TrailHead;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.util.List;

/**
 * What a backup holds.
 *
 * @param papers how many
 * @param heads of all series; whoever keeps them can tell later that no paper was taken away
 * @param trail how far it has come
 * @param isRestorable whether a restore will take it; else it is for rescue
 * @param findings what an audit found as it was written; papers whose files are missing or were changed are not in it
 */
public record BackupReport(Path file, long papers, List<SeriesHead> heads, TrailHead trail, boolean isRestorable,
        List<Problem> findings) {

    public BackupReport {
        heads = List.copyOf(heads);
        findings = List.copyOf(findings);
    }
}
