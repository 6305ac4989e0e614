package icequill.answer.rates;

import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What visits of the book come to by the rates of their days, and what they would come to by others; before tax.
 *
 * @param on the day whose prices are tried
 * @param version that is tried; empty for the rates of the folder
 * @param visits how many
 * @param customers by what they would pay more, the most first
 * @param classes of charges, in their usual order
 */
public record WhatIf(LocalDate on, Optional<String> version, int visits, List<Row> customers, List<Row> classes,
        Row total) {

    /**
     * A part of them.
     *
     * @param name of a customer or a class
     * @param now by the rates of their days
     * @param then by those that are tried
     * @param difference what they would come to more; negative for less
     */
    public record Row(String name, MonetaryAmount now, MonetaryAmount then, MonetaryAmount difference) {

        public Row(String name, MonetaryAmount now, MonetaryAmount then) {
            this(name, now, then, then.subtract(now));
        }

        private List<String> cells() {
            return List.of(name, Amounts.plain(now), Amounts.plain(then), Amounts.plain(difference));
        }
    }

    public WhatIf {
        customers = List.copyOf(customers);
        classes = List.copyOf(classes);
    }

    /** The heads of {@link #rows}, all but the first above amounts. */
    public static final List<String> HEAD = List.of("", "now", "then", "difference");

    /** For a screen: customers, then classes, then the total. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        customers.forEach(row -> rows.add(row.cells()));
        rows.add(List.of("", "", "", ""));
        classes.forEach(row -> rows.add(row.cells()));
        rows.add(List.of("", "", "", ""));
        rows.add(total.cells());
        return rows;
    }
}
