package icequill.party;

import icequill.party.Conditions.Air;
import java.util.Set;

/**
 * What is made or served at a site, as far as it bears on ice machines.
 *
 * @param air what there is much of at such sites
 */
public record SiteKind(String id, Wording name, Set<Air> air) {

    public SiteKind {
        air = Set.copyOf(air);
    }
}
