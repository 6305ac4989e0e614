package icequill.answer;

import icequill.ledger.care.AuditReport;
import icequill.ledger.papers.SealLine;
import icequill.ledger.papers.SeriesHead;
import icequill.ledger.trail.TrailHead;
import icequill.problem.Problem;
import java.util.List;

/**
 * How a book was found.
 *
 * @param papers how many were looked at
 * @param series each run of numbers
 * @param trail how far it has come
 * @param seal one line to keep elsewhere
 * @param findings what is wrong; empty when all is in order
 * @param filesElsewhere series of other offices whose files lie in folders of theirs, and how many papers
 */
public record AuditSheet(long papers, List<Series> series, TrailHead trail, String seal, List<Problem> findings,
        List<String> filesElsewhere) {

    /**
     * A run of numbers.
     *
     * @param seal of the last paper
     */
    public record Series(String series, long papers, String seal) {
        private static Series of(SeriesHead head) {
            return new Series(head.series().text(), head.papers(), head.seal());
        }
    }

    /** The heads of {@link #rows}. */
    public static final List<String> HEAD = List.of("series", "papers", "seal of the last");

    public AuditSheet {
        series = List.copyOf(series);
        findings = List.copyOf(findings);
        filesElsewhere = List.copyOf(filesElsewhere);
    }

    public static AuditSheet of(AuditReport report) {
        return new AuditSheet(report.papers(), report.heads().stream().map(Series::of).toList(), report.trail(),
                SealLine.of(report.heads(), report.trail()).text(), report.findings(), report.elsewhere());
    }

    /** A line for each series. */
    public List<List<String>> rows() {
        return series.stream().map(one -> List.of(one.series(), String.valueOf(one.papers()), one.seal())).toList();
    }

    /** How many changes the trail tells of. */
    public long changes() {
        return trail.rows();
    }
}
