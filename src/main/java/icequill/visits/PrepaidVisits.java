package icequill.visits;

import icequill.pricer.BlockPricing;
import icequill.pricer.PricedLine;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.work.Visit;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Visits that are billed together, and draw from what was sold ahead one after the other, in the order in which they began. */
public record PrepaidVisits(List<VisitContext> visits) {

    public PrepaidVisits {
        visits = List.copyOf(visits);
    }

    /** The same visits in the same order, priced so. */
    public Validated<List<VisitContext>> drawn() {
        Problems problems = new Problems();
        Map<String, VisitContext> priced = new HashMap<>();
        Map<String, BigDecimal> used = new HashMap<>();
        for (VisitContext hand : visits.stream()
                .sorted(Comparator.comparing((VisitContext each) -> each.visit().began())
                        .thenComparing(each -> each.visit().id()))
                .toList()) {
            problems.take(used.isEmpty() ? Validated.valid(hand) : hand.paidAhead(left(hand.visit(), used)))
                    .ifPresent(found -> {
                        priced.put(found.visit().id(), found);
                        found.taxed().priced().lines().stream().map(PricedLine::how).flatMap(BlockPricing::used)
                                .forEach(each -> used.merge(each.sale(), each.units(), BigDecimal::add));
                    });
        }
        return problems.or(() -> visits.stream().map(hand -> priced.get(hand.visit().id())).toList());
    }

    private static Visit left(Visit visit, Map<String, BigDecimal> used) {
        return visit.paidAhead(visit.terms().blocks().stream()
                .map(held -> held.less(used.getOrDefault(held.sale(), BigDecimal.ZERO))).toList());
    }
}
