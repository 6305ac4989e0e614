package icequill.answer.history;

import icequill.party.Address;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.MonetaryAmount;

/**
 * What happened at a site, the oldest visit first, in the language of the reader.
 *
 * @param site by id
 * @param machine the only one that is told of, by name; empty for all
 * @param papers that were issued for any of the visits, each once, in the order of issue
 */
public record SiteHistory(String site, String name, Optional<String> storeNumber, Address address,
        Optional<String> machine, Period period, List<ToldVisit> visits, List<ToldPaper> papers) {

    public SiteHistory {
        visits = List.copyOf(visits);
        papers = List.copyOf(papers);
    }

    /** How many visits were done, billed or not. */
    long done() {
        return count(EnumSet.of(VisitState.DONE, VisitState.BILLED));
    }

    long planned() {
        return count(EnumSet.of(VisitState.PLANNED));
    }

    long withdrawn() {
        return count(EnumSet.of(VisitState.WITHDRAWN));
    }

    /** How many visits that stand a customer asked for. */
    long calls() {
        return visits.stream()
                .filter(visit -> visit.call().isPresent() && visit.state() != VisitState.WITHDRAWN).count();
    }

    private long count(Set<VisitState> states) {
        return visits.stream().filter(visit -> states.contains(visit.state())).count();
    }

    /** What the invoices among the papers come to, less what credit notes give back; by currency. */
    List<MonetaryAmount> billed() {
        Map<String, MonetaryAmount> sums = new LinkedHashMap<>();
        papers.stream().filter(ToldPaper::isBill).flatMap(paper -> paper.gross().stream())
                .forEach(sum -> sums.merge(sum.getCurrency().getCurrencyCode(), sum, MonetaryAmount::add));
        return List.copyOf(sums.values());
    }
}
