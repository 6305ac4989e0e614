package icequill.outlook;

import icequill.document.BrushingSheet;
import icequill.document.BrushingSheetPair;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.BrushingRequest;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A request for a brushing sheet that was read, with everything that goes into it. */
public record BrushingContext(BrushingCase hand) {

    /** Machines that a request names and the site does not have. */
    public static List<Problem> unknown(BrushingRequest request, Site site) {
        List<String> known = site.machines().stream().map(Machine::id).toList();
        return request.reachable().stream().filter(named -> !known.contains(named.machine()))
                .map(named -> Problem.unknownName(named.place(), "machine", named.machine(), known)).toList();
    }

    public Site site() {
        return hand.site();
    }

    /** In the language asked for, or else the customer's, and once more for those who read another one. */
    public Validated<BrushingSheetPair> pair(LocalDate day, Optional<Language> wanted) {
        return sheet(day, wanted).then(front -> sheet(day, Optional.of(other(front.language())))
                .map(back -> new BrushingSheetPair(front, back)));
    }

    /** English is read beside any other language, and Spanish beside English. */
    private static Language other(Language language) {
        return language.equals(Language.ENGLISH) ? Language.SPANISH : Language.ENGLISH;
    }

    public Validated<BrushingSheet> sheet(LocalDate day, Optional<Language> wanted) {
        Language language = wanted.orElseGet(() -> site().customer().language().orElse(hand.shop().language()));
        return new BrushingAssembly(hand, language).sheet(day);
    }
}
