package icequill.explain;

import icequill.money.Exact;
import icequill.money.Percent;
import icequill.problem.Check;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** One detail within a phrase, kept as data so that each language and country writes it its own way. */
public sealed interface Fact {

    /** Text that is the same in every language: a name, a serial number. */
    record Text(String text) implements Fact {}

    /**
     * A thing of the shop's own, named in each language.
     *
     * @param others in further languages, by their tags; empty where there are none
     */
    record Named(String english, String spanish, Optional<Map<String, String>> others) implements Fact {
        public Named {
            others = others.map(Map::copyOf);
        }
    }

    /** A word of the program's, looked up by key. */
    record Word(String key) implements Fact {}

    /** A number with a unit's symbol; the symbol may be empty. */
    record Measure(BigDecimal number, String unit) implements Fact {
        public Measure {
            number = Exact.normal(number);
        }
    }

    record Amount(MonetaryAmount amount) implements Fact {}

    record Part(Percent percent) implements Fact {}

    record Day(LocalDate date) implements Fact {}

    record Time(LocalTime time) implements Fact {}

    /** Details in a row, at least one. */
    record Several(List<Fact> facts) implements Fact {
        public Several {
            facts = List.copyOf(facts);
            Check.that(!facts.isEmpty(), "no details");
        }
    }

    static Fact number(long number, String unit) {
        return new Measure(BigDecimal.valueOf(number), unit);
    }
}
