package icequill.ledger;

import icequill.problem.Problem;
import java.nio.file.Path;
import java.util.List;

/**
 * What a backup holds.
 *
 * @param papers how many
 * @param heads of all series; whoever keeps them can tell later that no paper was taken away
 * @param findings papers whose files are missing or were changed, which are therefore not in it
 */
public record BackupReport(Path file, long papers, List<SeriesHead> heads, List<Problem> findings) {

    public BackupReport {
        heads = List.copyOf(heads);
        findings = List.copyOf(findings);
    }
}
