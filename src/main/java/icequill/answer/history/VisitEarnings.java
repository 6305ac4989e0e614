package icequill.answer.history;

import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Rounding;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** What visits of the book brought in and cost the shop, before tax; for the owner. */
public record VisitEarnings(List<Row> rows, Row total) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * A part of them.
     *
     * @param id of a visit, a customer, a site or a plan; missing for all of them, and for those under no plan
     * @param name of the same
     * @param visits how many
     * @param net what was billed less what was given back; the price of what is not billed yet
     * @param cost of the shop, as far as it is known
     * @param withoutCost the part of the net whose cost is not known
     * @param margin what is left of the rest of the net; negative where it cost more
     * @param percent the margin of that rest, to one decimal; empty where there is none
     */
    public record Row(Optional<String> id, String name, int visits, MonetaryAmount net, MonetaryAmount cost,
            MonetaryAmount withoutCost, MonetaryAmount margin, Optional<BigDecimal> percent) {

        public static Row of(Optional<String> id, String name, int visits, MonetaryAmount net, MonetaryAmount cost,
                MonetaryAmount withoutCost) {
            MonetaryAmount known = net.subtract(withoutCost);
            MonetaryAmount margin = known.subtract(cost);
            Optional<BigDecimal> percent = known.isZero()
                    ? Optional.empty()
                    : Optional.of(Rounding.halfUp(Exact.of(Amounts.number(margin).multiply(HUNDRED))
                            .divide(Exact.of(Amounts.number(known))), 1));
            return new Row(id, name, visits, net, cost, withoutCost, margin, percent);
        }

        /** @param isAlone whether no other row has its name */
        private List<String> cells(boolean isAlone) {
            return List.of(isAlone ? name : id.map(found -> name + " (" + found + ")").orElse(name),
                    String.valueOf(visits), Amounts.plain(net), Amounts.plain(cost),
                    withoutCost.isZero() ? "" : Amounts.plain(withoutCost), Amounts.plain(margin),
                    percent.map(part -> part.toPlainString() + " %").orElse(""));
        }
    }

    public VisitEarnings {
        rows = List.copyOf(rows);
    }

    /** The heads of {@link #cells}, all but the first above figures. */
    public static final List<String> HEAD = List.of("", "visits", "net", "cost", "cost not known", "margin", "");

    /** For a screen, the total last. */
    public List<List<String>> cells() {
        return Stream.concat(rows.stream(), Stream.of(total)).map(row -> row
                .cells(rows.stream().filter(other -> other.name().equals(row.name())).count() < 2)).toList();
    }
}
