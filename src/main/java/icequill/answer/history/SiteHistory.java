package icequill.answer.history;

import icequill.party.Address;
import java.util.List;
import java.util.Optional;

/**
 * What happened at a site, the oldest visit first, in the language of the reader.
 *
 * @param site by id
 * @param machine the only one that is told of, by name; empty for all
 * @param papers that were issued for any of the visits, each once, in the order of issue
 */
public record SiteHistory(String site, String name, Optional<String> storeNumber, Address address,
        Optional<String> machine, Period period, HistoryCounts counts,
        List<ToldVisit> visits, List<ToldPaper> papers) {

    public SiteHistory {
        visits = List.copyOf(visits);
        papers = List.copyOf(papers);
    }
}
