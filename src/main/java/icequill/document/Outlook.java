package icequill.document;

import icequill.explain.Phrase;
import icequill.forecast.ChanceInTen;
import icequill.forecast.ChancesPerTenSites;
import icequill.party.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a customer may expect of each way of having his machines looked after, in figures as round as what is known of them. It
 * holds nothing of what the shop earns.
 *
 * @param years that it looks ahead beyond the first
 * @param recommended name of the plan that cleans as often as recommended, or comes nearest to it
 * @param answer what it comes to, sentence by sentence
 * @param ways paying per call first
 * @param beside what is not in any of the sums
 * @param inputs what it was figured from
 * @param reasons why cleanings should not be further apart than recommended
 */
public record Outlook(int years, Wording recommended, List<Phrase> answer, List<Way> ways, List<Beside> beside,
        List<Input> inputs,
        List<Phrase> reasons) {

    /**
     * A way of care.
     *
     * @param name of the plan, or of the interval in months; empty where nothing is planned
     * @param scope what it gives in the first year
     * @param planned price of a year
     * @param calls expected in a year, to a tenth
     * @param first what the first year may cost in all
     * @param later what all the years may cost in all
     * @param cheaperFirst the chance that the first year costs less in all than paying per call; empty for that itself
     * @param cheaperLater the same over all the years
     * @param year the first year, as expected
     * @param withOwnCosts what the first year may be expected to cost with what stops cost the customer besides; empty where he did
     *            not say
     */
    public record Way(CareOptionKind kind, Optional<Wording> name, CareOptionScope scope, MonetaryAmount planned,
            BigDecimal calls,
            ChancesPerTenSites sites, Span first, Span later, Optional<ChanceInTen> cheaperFirst,
            Optional<ChanceInTen> cheaperLater, ExpectedYear year, Optional<MonetaryAmount> withOwnCosts) {}

    /** Which costs of dirt there are to speak of beside the cash, as the words files name them. */
    public static String dirtCosts(List<Way> ways) {
        boolean own = ways.stream().anyMatch(way -> way.withOwnCosts().isPresent());
        boolean power = ways.stream().anyMatch(way -> !way.year().beside().electricity().isZero());
        return (own ? "own" : "ice") + (power ? "-power" : "");
    }

    /**
     * What the first year may be expected to come to, in parts that add up as they stand.
     *
     * @param planned what is paid whatever happens, with any catching up
     * @param calls what calls cost besides, as round as is known
     * @param beside what dirt costs beside the cash
     */
    public record ExpectedYear(MonetaryAmount planned, MonetaryAmount calls, DirtCosts beside) {

        public MonetaryAmount cash() {
            return planned.add(calls);
        }

        public MonetaryAmount all() {
            return cash().add(beside.sum());
        }
    }

    /**
     * What dirt costs beside the cash in a year, as round as is known, beyond the recommended plan.
     *
     * @param stops ice that is bought while machines stand still; where the customer told what a stop costs him, that for all stops
     * @param wear of machines that are replaced earlier
     */
    public record DirtCosts(MonetaryAmount stops, MonetaryAmount electricity, MonetaryAmount wear) {

        public MonetaryAmount sum() {
            return stops.add(electricity).add(wear);
        }
    }

    /**
     * What years may cost in all. At least eight in ten lie between the low and the high amount, and at least nine in ten are not
     * above the high one.
     *
     * @param low not below what is planned
     * @param mean of all
     * @param planned how many years cost just what is planned, which then is the low amount; empty where it is one in ten or fewer
     */
    public record Span(MonetaryAmount low, MonetaryAmount mean, MonetaryAmount high, Optional<ChanceInTen> planned) {}

    /** Something that no sum holds: what it is, how much of it, and where that comes from. */
    public record Beside(Phrase what, Phrase howMuch, Phrase origin) {}

    /** Something that went in, and who says so. */
    public record Input(Phrase what, Phrase origin) {}

    public Outlook {
        answer = List.copyOf(answer);
        ways = List.copyOf(ways);
        beside = List.copyOf(beside);
        inputs = List.copyOf(inputs);
        reasons = List.copyOf(reasons);
    }
}
