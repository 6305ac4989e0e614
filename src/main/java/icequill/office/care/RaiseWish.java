package icequill.office.care;

import icequill.files.pricing.PriceGroup;
import icequill.files.pricing.PriceRaise.By;
import icequill.money.Percent;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * By how much prices are to be raised, as somebody asks for it.
 *
 * @param from the first day of the new prices
 * @param groups a percentage for each group, with a step behind a colon where there is one: {@code 4:0.50}
 */
public record RaiseWish(LocalDate from, Map<String, String> groups) {

    private static final BigDecimal LEAST = BigDecimal.valueOf(-50);
    private static final BigDecimal MOST = BigDecimal.valueOf(100);

    public RaiseWish {
        groups = Map.copyOf(groups);
    }

    Validated<Map<PriceGroup, By>> read() {
        Problems problems = new Problems();
        Map<PriceGroup, By> read = new EnumMap<>(PriceGroup.class);
        groups.forEach((name, text) -> {
            Optional<PriceGroup> group = PriceGroup.of(name);
            if (group.isEmpty()) {
                problems.add(Problem.unknownName(Place.NOWHERE, "group of prices", name, PriceGroup.keys()));
            }
            by(name, text, problems).ifPresent(by -> group.ifPresent(known -> read.put(known, by)));
        });
        return problems.or(() -> read);
    }

    private static Optional<By> by(String name, String text, Problems problems) {
        String[] parts = text.split(":", -1);
        Optional<BigDecimal> percent = number(parts[0])
                .filter(value -> value.compareTo(LEAST) >= 0 && value.compareTo(MOST) <= 0 && value.signum() != 0);
        Optional<BigDecimal> step = parts.length > 1
                ? number(parts[1]).filter(value -> value.signum() > 0)
                : Optional.empty();
        if (percent.isEmpty() || parts.length > 2 || (parts.length == 2 && step.isEmpty())) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE, name + "=" + text + " is no percentage with a step",
                    "such as " + name
                            + "=4:0.50, with a percentage from -50 to 100 that is not 0; the step is above 0 and may be left out");
            return Optional.empty();
        }
        return percent.map(value -> new By(new Percent(value), step));
    }

    private static Optional<BigDecimal> number(String text) {
        return text.matches("-?\\d{1,6}([.]\\d{1,4})?") ? Optional.of(new BigDecimal(text)) : Optional.empty();
    }
}
