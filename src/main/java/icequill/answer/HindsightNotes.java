package icequill.answer;

import icequill.forecast.Decimals;
import icequill.forecast.Tally;
import icequill.plans.EstimateLevels.Level;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Says in words what a look back found.
 *
 * @param all calls of all sites
 */
record HindsightNotes(CallsComparison all) {

    String verdict() {
        Tally usual = all.usual();
        String range = usual.low() + " to " + usual.high();
        return switch (usual.fit()) {
        case FITS -> "The record fits the usual guess: in 8 years of 10 or more there are " + range + " calls.";
        case FEWER -> "Fewer calls came than the usual guess allows (" + range + ")" + closest();
        case MORE -> "More calls came than the usual guess allows (" + range + ")" + closest();
        };
    }

    private String closest() {
        Level level = all.closest();
        return (level == Level.USUAL
                ? ", yet the others are no closer."
                : "; the " + CallsComparison.word(level) + " guess is closer, which expects "
                        + Decimals.of(all.mean(level), 1) + ".")
                + " See which cause it is, and fit your records: icequill fit.";
    }

    static String guesses(YearSpan span) {
        return span.guessesOf().equals(span.begins())
                ? "The guesses are those of " + span.begins() + ", when the year began."
                : "The guesses are those of " + span.guessesOf() + ", since pricing/ has none of " + span.begins()
                        + ", when the year began.";
    }

    Optional<String> unknown(int calls) {
        return Optional.of(calls + " of " + all.atLeast() + " calls do not say what they were for: neither one side"
                + " that was cleaned, nor only a part. They may be of any cause.").filter(said -> calls > 0);
    }

    static Optional<String> callbacks(int calls) {
        return Optional.of("Calls back to our own work, not counted, since no machine is to blame: " + calls + ".")
                .filter(said -> calls > 0);
    }

    static Optional<String> withoutVisit(List<String> sites) {
        return Optional.of("Nobody was there in that year, so see whether they are customers still: "
                + String.join(", ", sites) + ".").filter(said -> !sites.isEmpty());
    }

    static Optional<String> newer(List<NewerSite> sites) {
        return Optional.of("Not counted, since the book has less than a year of them: " + sites.stream()
                .map(site -> site.site() + " (it has on " + site.firstVisit().plusYears(1) + ")")
                .collect(Collectors.joining(", ")) + ".").filter(said -> !sites.isEmpty());
    }
}
