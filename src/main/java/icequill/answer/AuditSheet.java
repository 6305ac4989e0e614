package icequill.answer;

import icequill.ledger.care.AuditReport;
import icequill.ledger.papers.SealLine;
import icequill.ledger.papers.SeriesHead;
import icequill.ledger.trail.TrailHead;
import icequill.problem.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How a book was found.
 *
 * @param papers how many were looked at
 * @param series each run of numbers: its name, how many papers, and the seal of the last
 * @param trail how far it has come
 * @param seal one line to keep elsewhere
 * @param findings what is wrong; empty when all is in order
 * @param elsewhere series of other offices whose files lie in folders of theirs, and how many papers
 */
public record AuditSheet(long papers, List<List<String>> series, TrailHead trail, String seal, List<Problem> findings,
        List<String> elsewhere) {

    /** The heads of {@link #series}. */
    public static final List<String> HEAD = List.of("series", "papers", "seal of the last");

    public AuditSheet {
        series = List.copyOf(series);
        findings = List.copyOf(findings);
        elsewhere = List.copyOf(elsewhere);
    }

    public static AuditSheet of(AuditReport report) {
        return new AuditSheet(report.papers(), report.heads().stream().map(AuditSheet::row).toList(), report.trail(),
                SealLine.of(report.heads(), report.trail()).text(), report.findings(), report.elsewhere());
    }

    private static List<String> row(SeriesHead head) {
        return List.of(head.series().text(), String.valueOf(head.papers()), head.seal());
    }

    /** How many changes the trail tells of. */
    public long changes() {
        return trail.rows();
    }

    private static Map<String, Object> view(List<String> row) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("series", row.get(0));
        view.put("papers", row.get(1));
        view.put("seal", row.get(2));
        return view;
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("papers", papers);
        view.put("series", series.stream().map(AuditSheet::view).toList());
        view.put("trail", Map.of("rows", trail.rows(), "seal", trail.seal()));
        view.put("seal", seal);
        view.put("findings", findings.stream().map(Problem::text).toList());
        if (!elsewhere.isEmpty()) {
            view.put("filesElsewhere", elsewhere);
        }
        return view;
    }
}
