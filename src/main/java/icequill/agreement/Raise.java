package icequill.agreement;

import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Check;
import java.math.BigDecimal;
import javax.money.MonetaryAmount;

/** How the price of a renewal comes about, before it is rounded and capped. */
public sealed interface Raise {

    /** The new price for an old one. */
    Figure of(MonetaryAmount old);

    /** What is said about it. */
    Phrase why();

    /** By a percentage, which is negative when the price falls. */
    record ByPercent(Percent percent) implements Raise {
        @Override
        public Figure of(MonetaryAmount old) {
            return Figure.price(old, "").times(Figure.percent(Percent.HUNDRED).plus(Figure.percent(percent)));
        }

        @Override
        public Phrase why() {
            return Phrase.of("reason.renewal-percent", new Fact.Part(percent));
        }
    }

    /**
     * As a published index has moved.
     *
     * @param before its level when the old price was made; above zero
     * @param now its level now; above zero
     */
    record ByIndex(Wording name, BigDecimal before, BigDecimal now) implements Raise {
        public ByIndex {
            Check.that(before.signum() > 0 && now.signum() > 0, "an index is not above zero: " + before + ", " + now);
        }

        @Override
        public Figure of(MonetaryAmount old) {
            return Figure.price(old, "").times(Figure.term(now, "")).over(Figure.term(before, ""));
        }

        @Override
        public Phrase why() {
            return Phrase.of("reason.renewal-index", name.named(),
                    new Fact.Measure(before, ""), new Fact.Measure(now, ""));
        }
    }

    /** Priced anew at today's rates. */
    record Repriced(MonetaryAmount price) implements Raise {
        @Override
        public Figure of(MonetaryAmount old) {
            return Figure.price(price, "");
        }

        @Override
        public Phrase why() {
            return Phrase.of("reason.renewal-repriced", new Fact.Amount(price));
        }
    }
}
