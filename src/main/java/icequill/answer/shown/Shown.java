package icequill.answer.shown;

import icequill.answer.EntrySheet;
import icequill.answer.history.VisitSheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that bears one name: a paper, or entries of the book.
 *
 * @param entries customer, site, machines, agreement and requests
 */
public record Shown(Optional<PaperSheet> paper, List<EntrySheet> entries, Optional<VisitSheet> visit) {

    public Shown {
        entries = List.copyOf(entries);
    }

    public static Shown paper(PaperSheet paper) {
        return new Shown(Optional.of(paper), List.of(), Optional.empty());
    }

    /** The command that tells more of an entry; empty where none does. */
    public static Optional<String> more(EntrySheet entry) {
        return switch (entry.kind()) {
        case "customer" -> Optional.of("icequill visit list --customer " + entry.id());
        case "site" -> Optional.of("icequill site history " + entry.id());
        case "machine" ->
            Optional.of("icequill machine history " + entry.values().get("site") + " " + entry.id());
        case "agreement" -> Optional.of("icequill issue --agreement " + entry.id());
        default -> Optional.empty();
        };
    }

    /** A paper as ever; entries by their kinds, of machines all that have the name. */
    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>(paper.map(PaperSheet::json).orElse(Map.of()));
        entries.stream().filter(entry -> !entry.kind().equals("machine")).forEach(entry -> view.putAll(entry.json()));
        List<Map<String, Object>> machines = entries.stream().filter(entry -> entry.kind().equals("machine"))
                .map(EntrySheet::values).toList();
        if (!machines.isEmpty()) {
            view.put("machines", machines);
        }
        visit.ifPresent(found -> view.put("visit", found.json()));
        return view;
    }
}
