package icequill.answer;

import icequill.answer.forecast.CallsHeld;
import icequill.files.answer.Sheet;
import java.time.LocalDate;
import java.util.List;
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

    /**
     * What JSON shows of it.
     *
     * @param from the first day of the year, and {@code until} the last
     * @param guessesOf the day whose guesses are taken
     * @param causes of all sites together
     * @param callsOfUnknownCause that may be of any cause
     * @param callbacks calls for what we had done badly, which are not counted
     * @param sitesWithoutVisit where nobody was in that year
     * @param sitesOfLessThanAYear that are not counted
     * @param notes what to make of it, and what to know about it
     */
    public record Data(LocalDate from, LocalDate until, LocalDate guessesOf, CallsHeld all, List<CallsHeld> sites,
            List<CallsHeld> causes, int callsOfUnknownCause, int callbacks, List<String> sitesWithoutVisit,
            List<NewerSite> sitesOfLessThanAYear, List<String> notes) {}

    @Override
    public Data data() {
        return new Data(span.begins(), span.until().minusDays(1), span.guessesOf(), all().held(),
                sites.stream().map(CallsComparison::held).toList(),
                causes.stream().map(CallsComparison::held).toList(), unknown, callbacks, withoutVisit, newer, notes());
    }
}
