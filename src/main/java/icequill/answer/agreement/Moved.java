package icequill.answer.agreement;

import java.util.List;

/**
 * What comes into an agreement, or goes out of it, at one of its sites in mid-term.
 *
 * @param site by id
 * @param added where machines stand that come in
 * @param removed where machines stand that go out
 */
public record Moved(What what, String site, String siteName, List<String> added, List<String> removed) {

    /** Machines at a site that stays, or a whole site. */
    public enum What {
        MACHINES, SITE_IN, SITE_OUT
    }

    public Moved {
        added = List.copyOf(added);
        removed = List.copyOf(removed);
    }
}
