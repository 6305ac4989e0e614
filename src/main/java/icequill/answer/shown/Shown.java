package icequill.answer.shown;

import icequill.answer.EntrySheet;
import icequill.answer.history.VisitSheet;
import java.util.List;
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
        case "machine" -> entry.site().map(site -> "icequill machine history " + site + " " + entry.id());
        case "agreement" -> Optional.of("icequill agreement next " + entry.id());
        default -> Optional.empty();
        };
    }
}
