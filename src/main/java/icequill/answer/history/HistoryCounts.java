package icequill.answer.history;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.money.MonetaryAmount;

/**
 * How many visits there are in a history, and what they came to.
 *
 * @param done billed or not
 * @param calls visits that stand and a customer asked for
 * @param billed what the invoices among the papers come to, less what credit notes give back; by currency
 */
public record HistoryCounts(long done, long planned, long withdrawn, long calls, List<Billed> billed) {

    /** A sum in one currency. */
    public record Billed(MonetaryAmount amount) {}

    public HistoryCounts {
        billed = List.copyOf(billed);
    }

    public static HistoryCounts of(List<ToldVisit> visits, List<ToldPaper> papers) {
        return new HistoryCounts(count(visits, EnumSet.of(VisitState.DONE, VisitState.BILLED)),
                count(visits, EnumSet.of(VisitState.PLANNED)), count(visits, EnumSet.of(VisitState.WITHDRAWN)),
                visits.stream()
                        .filter(visit -> visit.call().isPresent() && visit.state() != VisitState.WITHDRAWN).count(),
                billed(papers));
    }

    private static long count(List<ToldVisit> visits, Set<VisitState> states) {
        return visits.stream().filter(visit -> states.contains(visit.state())).count();
    }

    private static List<Billed> billed(List<ToldPaper> papers) {
        Map<String, MonetaryAmount> sums = new LinkedHashMap<>();
        papers.stream().filter(ToldPaper::isBill).flatMap(paper -> paper.gross().stream())
                .forEach(sum -> sums.merge(sum.getCurrency().getCurrencyCode(), sum, MonetaryAmount::add));
        return sums.values().stream().map(Billed::new).toList();
    }
}
