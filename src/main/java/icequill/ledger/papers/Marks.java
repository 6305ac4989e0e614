package icequill.ledger.papers;

import icequill.ledger.find.SearchKeys;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a paper's file says of its row, besides the data of the paper: with both, the row can be made again, and its seal fits the seal
 * that the next paper bears.
 */
public final class Marks {

    /** The seal of the paper before it. */
    public static final String PREVIOUS = "Previous";

    private static final String ISSUED = "Issued";
    private static final String RATES = "Rates";
    private static final String WHERE = "Where";
    private static final String CUSTOMER = "Customer";
    private static final String SITE = "Site";
    private static final String VISIT = "Visit";
    private static final String FURTHER = "FurtherVisits";
    private static final String BETWEEN = "/";
    private static final String AGREEMENT = "Agreement";
    private static final String CORRECTS = "Corrects";
    private static final String REPLACES = "Replaces";

    private Marks() {
    }

    /** Of a paper that is being issued. */
    public static Map<String, String> of(Numbered numbered, Origin origin, String ratesVersion, SearchKeys facts) {
        return of(numbered.previousSeal(), numbered.issuedAt(), ratesVersion, facts.where(), origin);
    }

    /** Of a paper that was issued, as its file bore them. */
    public static Map<String, String> of(IssuedPaper paper) {
        return of(paper.previousSeal(), paper.issuedAt().toString(), paper.ratesVersion(), paper.text(),
                paper.origin());
    }

    public static Map<String, String> of(PaperRow row) {
        return of(row.previousSeal(), row.issuedAt(), row.ratesVersion(), row.where(), row.origin());
    }

    private static Map<String, String> of(String previous, String issued, String rates, String where, Origin origin) {
        Map<String, String> marks = new TreeMap<>();
        marks.put(PREVIOUS, previous);
        marks.put(ISSUED, issued);
        marks.put(RATES, rates);
        marks.put(WHERE, where);
        origin.customer().ifPresent(id -> marks.put(CUSTOMER, id));
        origin.site().ifPresent(id -> marks.put(SITE, id));
        origin.visit().ifPresent(id -> marks.put(VISIT, id));
        if (!origin.further().isEmpty()) {
            marks.put(FURTHER, String.join(" ",
                    origin.further().stream().map(at -> at.visit() + BETWEEN + at.site()).toList()));
        }
        origin.agreement().ifPresent(number -> marks.put(AGREEMENT, number));
        origin.corrects().ifPresent(number -> marks.put(CORRECTS, number));
        origin.replaces().ifPresent(number -> marks.put(REPLACES, number));
        return marks;
    }

    public static Origin origin(Map<String, String> marks) {
        return new Origin(mark(marks, CUSTOMER), mark(marks, SITE), mark(marks, VISIT), mark(marks, AGREEMENT),
                mark(marks, CORRECTS), mark(marks, REPLACES), further(mark(marks, FURTHER).orElse("")));
    }

    /** Visits, each with its site. */
    private static List<Origin.At> further(String text) {
        return Stream.of(text.split(" ", -1)).filter(at -> at.contains(BETWEEN)).map(at -> new Origin.At(
                at.substring(0, at.indexOf(BETWEEN)), at.substring(at.indexOf(BETWEEN) + 1))).toList();
    }

    /** Whether the row can be made again by them. */
    public static boolean areWhole(Map<String, String> marks) {
        return marks.keySet().containsAll(Set.of(PREVIOUS, ISSUED, RATES, WHERE));
    }

    public static String previous(Map<String, String> marks) {
        return marks.getOrDefault(PREVIOUS, "");
    }

    public static String issued(Map<String, String> marks) {
        return marks.getOrDefault(ISSUED, "");
    }

    public static String rates(Map<String, String> marks) {
        return marks.getOrDefault(RATES, "");
    }

    public static String where(Map<String, String> marks) {
        return marks.getOrDefault(WHERE, "");
    }

    private static Optional<String> mark(Map<String, String> marks, String name) {
        return Optional.ofNullable(marks.get(name));
    }
}
