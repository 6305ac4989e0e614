package icequill.agreement;

import icequill.explain.Figure;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * The price of a term that is paid ahead, and what it is paid for.
 *
 * @param parts the term's price from its first day on, then what each change added from its own day on
 * @param visits of the whole term
 */
public record Prepaid(Term term, List<Part> parts, List<VisitShare> visits) {

    private static final String DAY = "day";

    /**
     * A price for the days from one on to the end of the term.
     *
     * @param price in whole minor units; negative where a machine was taken out
     */
    public record Part(MonetaryAmount price, LocalDate from) {}

    /**
     * A visit and its weight.
     *
     * @param list what it would cost by itself
     */
    public record VisitShare(LocalDate due, MonetaryAmount list, boolean done) {}

    public Prepaid {
        parts = List.copyOf(parts);
        visits = List.copyOf(visits);
    }

    CurrencyUnit currency() {
        return parts.getFirst().price().getCurrency();
    }

    /**
     * What is earned by the end of a day, not rounded.
     *
     * @param lastDay a day of the term
     */
    Figure earned(Earning earning, LocalDate lastDay) {
        return switch (earning) {
        case DAYS -> sum(parts.stream().map(part -> byDays(part, lastDay)).toList());
        // What has no visit at all, as a site that comes in after the last one, cannot be earned by them.
        case VISITS -> visits.isEmpty()
                ? earned(Earning.DAYS, lastDay)
                : sum(parts.stream().flatMap(part -> byVisits(part).stream()).toList());
        };
    }

    private Figure byDays(Part part, LocalDate lastDay) {
        long gone = Math.max(0, ChronoUnit.DAYS.between(part.from(), lastDay.plusDays(1)));
        return Figure.price(part.price(), "").times(Figure.term(gone, DAY))
                .over(Figure.term(term.daysFrom(part.from()), DAY));
    }

    /** The shares of those visits that were done; a change after the last visit is earned by all of them. */
    private List<Figure> byVisits(Part part) {
        List<VisitShare> later = visits.stream().filter(visit -> !visit.due().isBefore(part.from())).toList();
        List<VisitShare> own = later.isEmpty() ? visits : later;
        boolean free = own.stream().allMatch(visit -> visit.list().isZero());
        List<BigDecimal> weights = own.stream()
                .map(visit -> free ? BigDecimal.ONE : Amounts.number(visit.list())).toList();
        List<Figure> shares = new ArrayList<>();
        for (int i = 0; i < own.size(); i++) {
            if (own.get(i).done()) {
                shares.add(new Figure.Share(new BigDecimal(Amounts.plain(part.price())), weights, i,
                        currency().getDefaultFractionDigits()));
            }
        }
        return shares;
    }

    private Figure sum(List<Figure> figures) {
        return figures.stream().reduce(Figure::plus).orElse(Figure.price(Amounts.zero(currency()), ""));
    }
}
