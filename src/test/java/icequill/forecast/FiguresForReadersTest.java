package icequill.forecast;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.effects.Assumption;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import icequill.money.MinorUnits;
import icequill.money.Percent;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plain figures for customers, the owner's sensitivity, later years, wide lattices, and input that cannot be right. */
class FiguresForReadersTest {

    private static final FoulingLife CLOCK = new FoulingLife(2.5724, 13.838);
    private static final List<CallKind> KINDS = List.of(new CallKind(0.4, 15000), new CallKind(0.35, 27658),
            new CallKind(0.25, 52000));
    private static final CallTable TABLE = new CallTable(
            Map.of(Cause.RANDOM, KINDS, Cause.CONDENSER, KINDS, Cause.WATER, KINDS));
    private static final List<MachineRisk> ONE = List
            .of(new MachineRisk(0.2, Optional.empty(), 0, CLOCK, 12));
    private static final MaintenancePolicy NEVER = new MaintenancePolicy(0, CleaningSchedule.NEVER,
            CleaningSchedule.NEVER, TABLE);
    private static final MaintenancePolicy AGREEMENT = new MaintenancePolicy(60000, CleaningSchedule.every(6),
            CleaningSchedule.every(6), TABLE);

    private static Forecast year(MaintenancePolicy choice) {
        return Forecast.of(ONE, choice, StopPolicy.RESETS, 12);
    }

    /** By hand from .026532, .605667, .367801: 0.27, 6.06, 3.68; the one site that is left goes to the last. */
    @Test
    void tenSites_neverCleaned_byLargestRemainder() {
        assertThat(ChancesPerTenSites.of(year(NEVER).calls())).isEqualTo(new ChancesPerTenSites(0, 6, 4));
        // .648528, .288391, .063081
        assertThat(ChancesPerTenSites.of(year(AGREEMENT).calls())).isEqualTo(new ChancesPerTenSites(6, 3, 1));
    }

    @ParameterizedTest
    @CsvSource({"0, LESS, 1", "0.049, LESS, 1", "0.05, ABOUT, 1", "0.149, ABOUT, 1", "0.15, ABOUT, 2",
            "0.734, ABOUT, 7", "0.9499, ABOUT, 9", "0.95, MORE, 9", "1, MORE, 9"})
    void inTen_neverPromisesCertainty(double chance, ChanceInTen.Than than, int tenths) {
        assertThat(ChanceInTen.of(chance)).isEqualTo(new ChanceInTen(than, tenths));
    }

    @Test
    void minorUnits_thereAndBack_andRoundedOnce() {
        assertThat(MinorUnits.of(usd("12.34"))).isEqualTo(1234);
        assertThat(MinorUnits.amount(1234, USD)).isEqualTo(usd("12.34"));
        assertThat(Decimals.minorUnits(12.5)).isEqualTo(13);
        assertThat(Decimals.minorUnits(-12.5)).isEqualTo(-13);
        assertThat(Decimals.minorUnits(12.499999)).isEqualTo(12);
        assertThatIllegalArgumentException().isThrownBy(() -> MinorUnits.of(usd("0.001")));
    }

    /**
     * A year beside never cleaning: 404.756 - 121.089 - 600 = -316.33. Dearer by a tenth it is 60.00 less; calls at half or double
     * the charge move it by half or all of 283.667; random faults cancel.
     */
    @Test
    void sensitivity_widestFirst_movesAsFiguredByHand() {
        PolicyComparison question = new PolicyComparison(ONE, AGREEMENT, NEVER, StopPolicy.RESETS, 12, PriceTerms.NONE);

        Sensitivity<Assumption> found = Sensitivity.of(question,
                List.of(doubt(Assumption.RANDOM_FAULTS, 0.5, 2, question),
                        doubt(Assumption.PLANNED_PRICE, 0.9, 1.1, question),
                        doubt(Assumption.CALL_CHARGES, 0.5, 2, question),
                        doubt(Assumption.WATER_DIRT, 0.5, 2, question),
                        doubt(Assumption.MONTHS_RUN, 0.5, 1, question),
                        doubt(Assumption.CONDENSER_DIRT, 0.5, 2, question)));

        assertThat(found.base()).isEqualTo(-31633);
        assertThat(found.swings()).extracting(Sensitivity.Swing::figure).containsExactly(
                Assumption.CALL_CHARGES, Assumption.WATER_DIRT, Assumption.PLANNED_PRICE, Assumption.MONTHS_RUN,
                Assumption.RANDOM_FAULTS, Assumption.CONDENSER_DIRT);
        Sensitivity.Swing<Assumption> charges = found.swings().getFirst();
        assertThat(charges.low()).isEqualTo(-60000 + 14183);
        assertThat(charges.high()).isEqualTo(-60000 + 56733);
        Sensitivity.Swing<Assumption> planned = found.swings().get(2);
        assertThat(planned.width()).isEqualTo(12000);
        assertThat(found.swings().get(4).width()).isZero();
        assertThat(cheaper(Assumption.CALL_CHARGES.times(2, question)))
                .isGreaterThan(cheaper(Assumption.CALL_CHARGES.times(0.5, question)));
    }

    private static double cheaper(PolicyComparison question) {
        return Forecast.of(question.machines(), question.first(), question.policy(), question.months())
                .chanceCheaperThan(Forecast.of(question.machines(), question.second(), question.policy(),
                        question.months()));
    }

    private static Sensitivity.ParameterRange<Assumption> doubt(Assumption figure, double low, double high,
            PolicyComparison question) {
        return new Sensitivity.ParameterRange<>(figure, figure.times(low, question), figure.times(high, question));
    }

    /** Choices that share a table share their random faults; an agreement whose calls are dearer or cheaper keeps the difference. */
    @Test
    void comparison_differentRandomCharges_keepsTheDifference() {
        FoulingLife never = new FoulingLife(3, 1e6);
        List<MachineRisk> machines = List.of(new MachineRisk(1, Optional.empty(), 0, never, 0));
        Forecast list = Forecast.of(machines, choice(0, 20000, 30000), StopPolicy.RESETS, 12);
        Forecast mixed = Forecast.of(machines, choice(0, 19000, 31000), StopPolicy.RESETS, 12);

        // Kinds of half each: 10.00 less and 10.00 more come as Poisson numbers of mean 1/2; less often the first: Skellam.
        double half = 0.5;
        double none = Math.exp(-2 * half);
        double tie = 0;
        for (int n = 0; n < 20; n++) {
            tie += none * Math.pow(half, 2 * n) / Math.pow(factorial(n), 2);
        }
        assertThat(mixed.chanceCheaperThan(list)).isEqualTo((1 - tie) / 2, within(1e-9));
        assertThat(list.chanceCheaperThan(mixed)).isEqualTo((1 - tie) / 2, within(1e-9));
    }

    private static double factorial(int n) {
        double product = 1;
        for (int i = 2; i <= n; i++) {
            product *= i;
        }
        return product;
    }

    private static MaintenancePolicy choice(long planned, long first, long second) {
        List<CallKind> kinds = List.of(new CallKind(0.5, first), new CallKind(0.5, second));
        return new MaintenancePolicy(planned, CleaningSchedule.NEVER, CleaningSchedule.NEVER,
                new CallTable(Map.of(Cause.RANDOM, kinds, Cause.CONDENSER, kinds, Cause.WATER, kinds)));
    }

    /** Thirty machines over five years in single cents need a wider lattice, which says so and keeps mean and spread. */
    @Test
    void law_wideSums_stepIsStatedAndMomentsStay() {
        List<MachineRisk> machines = java.util.Collections.nCopies(30,
                new MachineRisk(0.5, Optional.of(CLOCK), 3, CLOCK, 7));
        List<CallKind> kinds = List.of(new CallKind(0.5, 15001), new CallKind(0.5, 40250));
        Forecast forecast = Forecast.of(machines,
                new MaintenancePolicy(0, CleaningSchedule.NEVER, CleaningSchedule.NEVER,
                        new CallTable(Map.of(Cause.RANDOM, kinds, Cause.CONDENSER, kinds, Cause.WATER, kinds))),
                StopPolicy.RESETS, 60);
        MixedDistribution law = forecast.charges();

        assertThat(law.step()).isGreaterThan(1);
        assertThat(law.step()).isLessThan(1000);
        // Nearly normal: its quantiles lie where those of a normal law do, to a hundredth of the spread.
        assertThat((law.quantile(0.5) - law.mean()) / law.deviation()).isEqualTo(0, within(0.02));
        assertThat((law.quantile(0.9) - law.mean()) / law.deviation()).isEqualTo(1.2816, within(0.02));
        assertThat((law.quantile(0.1) - law.mean()) / law.deviation()).isEqualTo(-1.2816, within(0.02));
        assertThat(law.chanceOfAtMost(Long.MAX_VALUE / 4)).isEqualTo(1, within(1e-9));
    }

    /** By hand: 400.00 a year at 2 % more and 5 % interest: 400 (1 + 1.02/1.05 + half of (1.02/1.05)^2) = 977.31. */
    @Test
    void laterYears_planned_countedFromTheBeginningOfEach() {
        PriceTerms terms = new PriceTerms(Percent.of("2"), Percent.of("5"));
        MaintenancePolicy choice = new MaintenancePolicy(40000, CleaningSchedule.every(6), CleaningSchedule.every(6),
                TABLE);

        assertThat(Forecast.of(ONE, choice, StopPolicy.RESETS, 30, terms).planned()).isEqualTo(97731);
        assertThat(Forecast.of(ONE, choice, StopPolicy.RESETS, 30).planned()).isEqualTo(100000);
    }

    /** Equal rates cancel, whatever they are; and a year that a call falls into keeps the mean of the renewals. */
    @Test
    void laterYears_callResets_meanIsTheSumOfTheYears() {
        PriceTerms terms = new PriceTerms(Percent.of("0"), Percent.of("10"));
        Forecast discounted = Forecast.of(ONE, NEVER, StopPolicy.RESETS, 36, terms);
        double[] until = {0, 0, 0, 0};
        for (int year = 1; year <= 3; year++) {
            until[year] = Forecast.of(ONE, NEVER, StopPolicy.RESETS, 12 * year).charges().mean();
        }
        double expected = 0;
        for (int year = 0; year < 3; year++) {
            expected += (until[year + 1] - until[year]) / Math.pow(1.1, year);
        }

        // Each charge is rounded to a cent.
        assertThat(discounted.charges().mean()).isEqualTo(expected, within(3.0));
        assertThat(new PriceTerms(Percent.of("4"), Percent.of("4")).isNone()).isTrue();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PriceTerms(Percent.of("-51"), Percent.of("4")));
    }

    /** (60/3)^4 is 160 000 stops where a call takes no dirt away. */
    @Test
    void forecast_hundredsOfStops_isAMistake() {
        List<MachineRisk> machines = List
                .of(new MachineRisk(0.2, Optional.of(new FoulingLife(4, 3)), 0, new FoulingLife(4, 3), 0));

        assertThat(problems(machines, NEVER, StopPolicy.RESTARTS, 60)).containsExactly(Code.NOT_ALLOWED,
                Code.NOT_ALLOWED);
        assertThat(problems(machines, NEVER, StopPolicy.RESTARTS, 0)).containsExactly(Code.OUT_OF_RANGE);
        assertThat(problems(machines, NEVER, StopPolicy.RESETS, 60)).isEmpty();
        assertThat(Forecast.of(machines, NEVER, StopPolicy.RESETS, 60).calls(Cause.WATER).mean()).isEqualTo(
                Forecast.of(machines, NEVER, StopPolicy.RESETS, 60).calls(Cause.CONDENSER).mean());
        assertThat(problems(machines, AGREEMENT, StopPolicy.RESTARTS, 12)).isEmpty();
        assertThat(Forecast.of(machines, AGREEMENT, StopPolicy.RESTARTS, 12).calls(Cause.WATER).mean())
                .isEqualTo(2 * Math.pow(6 / 3.0, 4), within(1e-9));
    }

    private static List<Code> problems(List<MachineRisk> machines, MaintenancePolicy choice, StopPolicy policy,
            double months) {
        return Forecast.problems(machines, choice.water(), choice.condenser(), policy, months, Place.NOWHERE).stream()
                .map(Problem::code).toList();
    }

    /** Nobody has clocks that strike on a day, or machines that stop each month; nor prices below nothing. */
    @Test
    void clockAndChoice_absurd_sayWhy() {
        assertThat(FoulingLife.ofChances(0.0001, 0.9999, Place.NOWHERE).problems()).extracting(Problem::code)
                .containsExactly(Code.OUT_OF_RANGE);
        assertThat(FoulingLife.ofChances(0.9999, 0.99999999, Place.NOWHERE).problems()).extracting(Problem::code)
                .containsExactly(Code.OUT_OF_RANGE);
        assertThatIllegalArgumentException().isThrownBy(
                () -> year(new MaintenancePolicy(0, new CleaningSchedule(0, 1), CleaningSchedule.NEVER, TABLE)));
        assertThatIllegalArgumentException().isThrownBy(() -> Forecast.of(ONE, NEVER, StopPolicy.RESETS, 121));
        assertThatIllegalArgumentException().isThrownBy(() -> new CallTable(
                Map.of(Cause.RANDOM, List.of(new CallKind(0.5, 1)), Cause.CONDENSER, KINDS, Cause.WATER, KINDS)));
        assertThatIllegalArgumentException().isThrownBy(
                () -> new MaintenancePolicy(-1, CleaningSchedule.NEVER, CleaningSchedule.NEVER, TABLE));
        assertThatIllegalArgumentException().isThrownBy(() -> new MachineRisk(-0.1, Optional.empty(), 0, CLOCK, 0));
    }
}
