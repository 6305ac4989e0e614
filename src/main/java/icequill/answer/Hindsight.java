package icequill.answer;

import icequill.files.answer.Sheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A year's forecast held against the calls that the book has, for the owner. */
public final class Hindsight implements Sheet {

    public static final List<String> HEAD = List.of("", "expected", "8 years in 10", "came", "the record",
            "closest guess");

    private final YearSpan span;
    private final List<CallsComparison> sites;
    private final List<CallsComparison> causes;
    private final int unknown;
    private final int callbacks;
    private final List<String> withoutVisit;
    private final List<NewerSite> newer;

    /**
     * @param causes of all sites together
     * @param unknown calls that may be of any cause
     * @param callbacks calls for what we had done badly, which are not counted
     * @param withoutVisit sites where nobody was in that year
     * @param newer sites that are not counted
     */
    Hindsight(YearSpan span, List<CallsComparison> sites, List<CallsComparison> causes, int unknown, int callbacks,
            List<String> withoutVisit, List<NewerSite> newer) {
        this.span = span;
        this.sites = List.copyOf(sites);
        this.causes = List.copyOf(causes);
        this.unknown = unknown;
        this.callbacks = callbacks;
        this.withoutVisit = List.copyOf(withoutVisit);
        this.newer = List.copyOf(newer);
    }

    CallsComparison all() {
        return sites.stream().reduce(CallsComparison.none("all"), CallsComparison::plus);
    }

    public String heading() {
        return "Calls that were to be expected and calls that came, from " + span.begins() + " to "
                + span.until().minusDays(1);
    }

    /** A line for each site, and one for all together. */
    public List<List<String>> bySite() {
        return Stream.concat(sites.stream(), Stream.of(all())).map(CallsComparison::row).toList();
    }

    /** A line for each cause, at all sites together. */
    public List<List<String>> byCause() {
        return causes.stream().map(CallsComparison::row).toList();
    }

    /** What to make of it, and what to know about it, a sentence or two each. */
    public List<String> notes() {
        HindsightNotes notes = new HindsightNotes(all());
        return Stream.of(Stream.of(notes.verdict(), HindsightNotes.guesses(span)),
                notes.unknown(unknown).stream(), HindsightNotes.callbacks(callbacks).stream(),
                HindsightNotes.withoutVisit(withoutVisit).stream(), HindsightNotes.newer(newer).stream())
                .flatMap(line -> line).toList();
    }

    @Override
    public Object data() {
        return json();
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("from", span.begins().toString());
        view.put("until", span.until().minusDays(1).toString());
        view.put("guessesOf", span.guessesOf().toString());
        view.put("all", all().json("where"));
        view.put("sites", sites.stream().map(site -> site.json("site")).toList());
        view.put("causes", causes.stream().map(cause -> cause.json("cause")).toList());
        view.put("callsOfUnknownCause", unknown);
        view.put("callbacks", callbacks);
        view.put("sitesWithoutVisit", withoutVisit);
        view.put("sitesOfLessThanAYear", newer.stream().map(Hindsight::newer).toList());
        view.put("notes", notes());
        return view;
    }

    private static Map<String, Object> newer(NewerSite site) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("site", site.site());
        view.put("firstVisit", site.since().toString());
        return view;
    }
}
