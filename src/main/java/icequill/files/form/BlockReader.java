package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.problem.Code;
import icequill.work.Block;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes what is sold ahead from its entry.
 *
 * @param line on which it stands, in one's own words
 */
record BlockReader(Fields line, Fields sold) {

    /** Empty when something needed is missing or wrong, which is then reported. */
    Optional<Block> read(Outcome outcome) {
        checkLine(outcome);
        List<ChargeClass> on = sold.has("on")
                ? sold.constants("on", ChargeClass.class)
                : line.constant("class", ChargeClass.class).stream().toList();
        Optional<Integer> minutes = sold.integer("minutes");
        Optional<Integer> visits = sold.integer("visits");
        if (sold.has("minutes") == sold.has("visits")) {
            sold.problems().add(Code.NOT_ALLOWED, sold.place(), "needs minutes or visits", "one of the two");
            return Optional.empty();
        }
        if (on.isEmpty()) {
            return Optional.empty();
        }
        if (sold.has("minutes") && !on.stream().allMatch(ChargeClass::isLabor)) {
            sold.problems().add(Code.NOT_ALLOWED, sold.place("on"), "minutes of what is no labor",
                    "cleaning, repair, diagnosis or travel; or visits:");
        }
        return minutes.map(count -> block(Block.Of.MINUTES, count, on))
                .or(() -> visits.map(count -> block(Block.Of.VISITS, count, on)));
    }

    private Block block(Block.Of of, int count, List<ChargeClass> on) {
        Map<String, BigDecimal> factors = new HashMap<>();
        sold.child("factors").ifPresent(bands -> bands.entries().keySet()
                .forEach(band -> bands.number(band).ifPresent(factor -> factors.put(band, factor))));
        return new Block(of, count, on, factors, sold.day("until"), sold.place());
    }

    private void checkLine(Outcome outcome) {
        if (line.number("amount").filter(amount -> amount.compareTo(BigDecimal.ONE) != 0).isPresent()
                || line.has("unit")) {
            line.problems().add(Code.NOT_ALLOWED, line.place("block"), "sold ahead, but not as one thing",
                    "no amount and no unit: the price is that of the whole block");
        }
        if (!outcome.isCharged() || line.has("back")) {
            line.problems().add(Code.NOT_ALLOWED, line.place("block"), "sold ahead, but not charged",
                    "neither outcome nor back beside block");
        }
        if (line.constant("class", ChargeClass.class).filter(on -> !on.isLabor()).isPresent()) {
            line.problems().add(Code.NOT_ALLOWED, line.place("class"), "what is sold ahead is no labor",
                    "class: cleaning, repair, diagnosis or travel");
        }
    }
}
