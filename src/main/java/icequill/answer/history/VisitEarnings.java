package icequill.answer.history;

import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Rounding;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** What visits of the book were charged at and cost the shop, before tax; for the owner. */
public record VisitEarnings(List<Row> rows, Row total) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * A part of them.
     *
     * @param name of a visit, a customer, a site or a plan
     * @param visits how many
     * @param net charged
     * @param cost of the shop
     * @param margin what is left; negative where it cost more
     * @param percent the margin of what was charged, to one decimal; empty where nothing was
     */
    public record Row(String name, int visits, MonetaryAmount net, MonetaryAmount cost, MonetaryAmount margin,
            Optional<BigDecimal> percent) {

        public static Row of(String name, int visits, MonetaryAmount net, MonetaryAmount cost) {
            MonetaryAmount margin = net.subtract(cost);
            Optional<BigDecimal> percent = net.isZero()
                    ? Optional.empty()
                    : Optional.of(Rounding.halfUp(Exact.of(Amounts.number(margin).multiply(HUNDRED))
                            .divide(Exact.of(Amounts.number(net))), 1));
            return new Row(name, visits, net, cost, margin, percent);
        }

        private List<String> cells() {
            return List.of(name, String.valueOf(visits), Amounts.plain(net), Amounts.plain(cost),
                    Amounts.plain(margin), percent.map(part -> part.toPlainString() + " %").orElse(""));
        }
    }

    public VisitEarnings {
        rows = List.copyOf(rows);
    }

    /** The heads of {@link #cells}, all but the first above figures. */
    public static final List<String> HEAD = List.of("", "visits", "net", "cost", "margin", "");

    /** For a screen, the total last. */
    public List<List<String>> cells() {
        return Stream.concat(rows.stream(), Stream.of(total)).map(Row::cells).toList();
    }
}
