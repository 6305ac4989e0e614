package icequill.agreement;

import icequill.money.Percent;
import icequill.party.Machine;
import icequill.problem.Place;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Flat prices for planned work, in place of labor and doses.
 *
 * @param further off each machine of a visit but the dearest
 */
public record FlatPrices(List<Row> rows, Percent further) {

    public static final FlatPrices NONE = new FlatPrices(List.of(), Percent.ZERO);

    /**
     * The price for one machine.
     *
     * @param scope by id
     * @param upTo harvest rate, inclusive, in pounds per 24 hours
     */
    public record Row(String scope, Machine.Make make, BigDecimal upTo, MonetaryAmount price, Place place) {}

    public FlatPrices {
        rows = rows.stream().sorted(Comparator.comparing(Row::upTo)).toList();
    }

    public boolean has(String scope) {
        return rows.stream().anyMatch(row -> row.scope().equals(scope));
    }

    /** The row for a machine, by how it makes ice and its size; empty where there is none so large. */
    public Optional<Row> row(String scope, Machine machine) {
        return rows.stream().filter(row -> row.scope().equals(scope) && row.make() == machine.make()
                && machine.harvestRate().compareTo(row.upTo()) <= 0).findFirst();
    }
}
