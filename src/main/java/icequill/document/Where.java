package icequill.document;

import icequill.party.Address;
import icequill.party.Site;
import java.util.Optional;

/** The site that a paper is about. */
public record Where(String site, Optional<String> storeNumber, Address address) {

    public static Where of(Site site) {
        return new Where(site.name(), site.storeNumber(), site.address());
    }
}
