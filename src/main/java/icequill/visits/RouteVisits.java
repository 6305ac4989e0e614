package icequill.visits;

import icequill.pricer.Pricer;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.work.Route;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/**
 * Visits that are billed together. Those of one route on one day share what the first arrival of them charges for coming out, by largest
 * remainder in the order of arrival; what is billed later pays its own.
 */
public record RouteVisits(List<VisitContext> visits) {

    private record Round(String route, LocalDate day) {

        static Optional<Round> of(VisitContext hand) {
            return hand.visit().terms().route().map(route -> new Round(route.name(), hand.visit().day()));
        }
    }

    public RouteVisits {
        visits = List.copyOf(visits);
    }

    /** The same visits in the same order, priced so. */
    public Validated<List<VisitContext>> shared() {
        Map<Round, List<VisitContext>> rounds = visits.stream().filter(hand -> Round.of(hand).isPresent())
                .sorted(Comparator.comparing((VisitContext hand) -> hand.visit().began())
                        .thenComparing(hand -> hand.visit().id()))
                .collect(Collectors.groupingBy(hand -> Round.of(hand).orElseThrow()));
        Problems problems = new Problems();
        List<VisitContext> all = new ArrayList<>();
        for (VisitContext hand : visits) {
            List<VisitContext> round = Round.of(hand).map(rounds::get).orElse(List.of());
            problems.take(round.size() > 1 ? sharing(round, hand) : Validated.valid(hand)).ifPresent(all::add);
        }
        return problems.or(() -> List.copyOf(all));
    }

    private static Validated<VisitContext> sharing(List<VisitContext> round, VisitContext hand) {
        VisitContext first = round.getFirst();
        MonetaryAmount whole = Pricer.serviceCall(first.visit(), first.site(), first.rates());
        return hand.sharing(new Route.Shared(whole, round.size(), round.indexOf(hand) + 1));
    }
}
