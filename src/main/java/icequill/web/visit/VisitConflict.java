package icequill.web.visit;

import icequill.answer.entry.VisitChoices;
import icequill.office.asking.KnownVisit;
import icequill.office.asking.KnownVisits;
import icequill.office.asking.LastChange;
import icequill.office.asking.TypedVisit;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Shows two versions of a visit that two people changed, and lets the later one decide. */
final class VisitConflict {

    /** What every form has besides. */
    private static final Set<String> OWN = Set.of("key", "version");

    private VisitConflict() {
    }

    /**
     * What its page shows.
     *
     * @param version of what the book says now
     * @param changed who changed it meanwhile, and when; empty where the book does not tell
     * @param mine the fields of the page that cannot be stored
     */
    public record Shown(String address, String visit, String version, Optional<LastChange> changed,
            List<Difference> differences, Map<String, List<String>> mine) {}

    /** What one thing is in both versions; no letters where it is not told. */
    public record Difference(String what, String mine, String theirs) {}

    /** @param told the later version, which is not stored */
    static Answer page(Asked asked, KnownVisit now, TypedVisit told, VisitChoices choices, String address) {
        Map<String, List<String>> mine = VisitForm
                .fields(new KnownVisit(now.id(), now.site(), now.isPlanned(), now.version(), told.told()));
        Map<String, List<String>> theirs = VisitForm.fields(now);
        FieldWords words = new FieldWords(asked.reader().sentences(), choices);
        Set<String> names = new LinkedHashSet<>(mine.keySet());
        names.addAll(theirs.keySet());
        List<Difference> differences = names.stream()
                .map(name -> new Difference(words.name(name), words.text(name, mine.getOrDefault(name, List.of())),
                        words.text(name, theirs.getOrDefault(name, List.of()))))
                .filter(difference -> !difference.mine().equals(difference.theirs())).toList();
        Map<String, List<String>> fields = new LinkedHashMap<>(asked.fields());
        fields.keySet().removeAll(OWN);
        return new Answer.Shown("visit-conflict",
                new Shown(address, now.id(), now.version(),
                        new KnownVisits(asked.book()).lastChange(now.id()), differences, fields),
                differences);
    }
}
