package icequill.agreement;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Check;
import icequill.problem.Place;
import icequill.work.ChargeClass;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/**
 * A maintenance plan that a shop offers.
 *
 * @param slots the visits of a year in order, evenly spaced; 1, 2, 3, 4, 6 or 12
 * @param exclusions what the agreement does not cover
 * @param response hours within which somebody comes after a call, by the id of the labor band in which it was made
 * @param discount off the planned visits
 * @param quantity what is off them instead where much is looked after; empty for none
 * @param callDiscounts off all other work while the agreement is in force, by class
 * @param step full multiples of which the year's price is; above zero
 * @param cap the most a renewal may raise the price by, in percent a year
 */
public record Tier(String id, Wording name, List<Slot> slots, List<Wording> exclusions, Map<String, Integer> response,
        IncludedCalls included, Percent discount, Optional<QuantityDiscounts> quantity,
        Map<ChargeClass, Percent> callDiscounts, MonetaryAmount step, Percent cap, Place place) {

    private static final int YEAR = 12;

    public Tier {
        slots = List.copyOf(slots);
        exclusions = List.copyOf(exclusions);
        response = Map.copyOf(response);
        callDiscounts = Map.copyOf(callDiscounts);
        Check.that(fitsIntoAYear(slots.size()), "slots of a year: " + slots.size());
        Check.that(step.isPositive(), "a price step is not above zero: " + step);
    }

    /** As a customer may see it: without what the shop adds to the expected cost of included calls, and what others would get. */
    public Tier promised() {
        return new Tier(id, name, slots, exclusions, response, new IncludedCalls(included.number(), Percent.ZERO),
                discount, Optional.empty(), callDiscounts, step, cap, place);
    }

    public boolean includesCalls() {
        return included.number() > 0;
    }

    /** Whether so many visits of a year are whole months apart. */
    public static boolean fitsIntoAYear(int slots) {
        return slots > 0 && YEAR % slots == 0;
    }

    /** From one visit to the next. */
    public int months() {
        return YEAR / slots.size();
    }

    /** The most months from one full cleaning to the next, year after year; empty when there is none. */
    public Optional<Integer> monthsBetweenFullCleans() {
        return monthsBetween(Scope::isFullClean);
    }

    /** The most months from one visit whose scope is so to the next, year after year; empty when there is none. */
    public Optional<Integer> monthsBetween(Predicate<Scope> so) {
        List<Integer> found = IntStream.range(0, slots.size()).filter(i -> so.test(slots.get(i).scope())).boxed()
                .toList();
        return IntStream.range(0, found.size())
                .mapToObj(i -> i + 1 < found.size()
                        ? found.get(i + 1) - found.get(i)
                        : found.getFirst() + slots.size() - found.get(i))
                .max(Integer::compare).map(gap -> gap * months());
    }

    /** Whether its full cleanings are as close together as a site should get them. */
    public boolean meets(CleaningInterval interval) {
        return monthsBetweenFullCleans().filter(months -> months <= interval.months()).isPresent();
    }

    /** What is off other work than the planned visits, a sentence for each percentage, the largest first. */
    public List<Phrase> callTerms() {
        Map<BigDecimal, List<ChargeClass>> byPercent = new TreeMap<>(Comparator.reverseOrder());
        callDiscounts.entrySet().stream().filter(off -> !off.getValue().isZero()).sorted(Map.Entry.comparingByKey())
                .forEach(off -> byPercent.computeIfAbsent(off.getValue().value(), percent -> new ArrayList<>())
                        .add(off.getKey()));
        return byPercent.entrySet().stream().map(off -> Phrase.of("choice.call-discount",
                new Fact.Part(new Percent(off.getKey())),
                new Fact.Several(off.getValue().stream().map(ChargeClass::word).toList()))).toList();
    }
}
