package icequill.answer.rates;

import icequill.answer.Listing;
import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * What is charged on a day, with where each price stands.
 *
 * @param site by id, whose own prices are laid over the shop's; empty for the shop's alone
 * @param prices in the order of their groups
 */
public record DayPrices(LocalDate on, Optional<String> site, List<Price> prices) implements Listing {

    /** What a price is part of. */
    public enum Group {
        SERVICE_CALL, LABOR, CHEMICALS, FILTERS, PARTS, DISPOSAL, MODIFIERS, FEES, SURCHARGES, DISCOUNTS, PLANS, FLAT,
        TAX
    }

    /** What a price is for, or a number tells. */
    public enum Per {
        CALL, MILE, HOUR, FIRST_HOUR, TRAVEL_HOUR, LEAST_MINUTES, STEP_MINUTES, MINUTES_INCLUDED, UNIT, PACK, EACH,
        UNDER, FLOOR, CAP,
        PERCENT, MACHINE, FURTHER
    }

    /**
     * A price, or a number that makes one.
     *
     * @param name of what it is for, in the language of the reader
     * @param detail such as the hours or the size that it is for; may be empty
     * @param amount empty for a number
     * @param number a percentage, minutes; empty for an amount
     * @param unit by which it is sold; empty where {@code per} says it
     * @param agreed with whom, where it is not the shop's own
     * @param line from 1; 0 when unknown
     * @param source as the file says it
     * @param isAsShipped whether the file says that it is still as it came with the program
     */
    public record Price(Group group, String name, String detail, Optional<MonetaryAmount> amount,
            Optional<BigDecimal> number, Per per, Optional<String> unit, Optional<String> agreed, String file, int line,
            Optional<String> source, boolean isAsShipped) {

        /** As the file writes it. */
        public String shown() {
            return amount.map(Amounts::plain).or(() -> number.map(BigDecimal::toPlainString)).orElse("");
        }

        private String what() {
            return detail.isEmpty() ? name : name + ", " + detail;
        }
    }

    /** The prices of a group. */
    public record Grouped(Group group, List<Price> prices) {

        public Grouped {
            prices = List.copyOf(prices);
        }
    }

    public DayPrices {
        prices = List.copyOf(prices);
    }

    /** By their groups, for a page. */
    public List<Grouped> byGroup() {
        return Stream.of(Group.values())
                .map(group -> new Grouped(group, prices.stream().filter(price -> price.group() == group).toList()))
                .filter(group -> !group.prices().isEmpty()).toList();
    }

    @Override
    public List<String> head() {
        return List.of("", "price", "per", "whose", "where", "source");
    }

    @Override
    public List<List<String>> rows() {
        return prices.stream().map(price -> List.of(price.what(), price.shown(),
                price.unit().orElseGet(() -> ConstantKey.of(price.per()).replace('-', ' ')),
                price.agreed().orElse(""), price.line() == 0 ? price.file() : price.file() + ":" + price.line(),
                price.source().orElse(""))).toList();
    }
}
