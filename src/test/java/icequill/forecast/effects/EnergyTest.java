package icequill.forecast.effects;

import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import icequill.DemoShop;
import icequill.RatesFixture;
import icequill.explain.Figure;
import icequill.explain.HowReader;
import icequill.forecast.MeanDirt;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Machine;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Energy and ice against the limits of 10 CFR 431.136, published yearly figures and textbook heat. */
class EnergyTest {

    private static final FoulingLife CLOCK = new FoulingLife(2.5724, 13.838);

    private static final LocalDate MADE_2015 = LocalDate.of(2015, 6, 1);
    private static final LocalDate MADE_2020 = LocalDate.of(2020, 6, 1);
    private static final CondensingRise CLEAN = rise("0");
    private static final int YEAR = 365;

    private static EnergyLimits limits = new EnergyLimits(List.of());

    @TempDir
    private static Path shop;

    @BeforeAll
    static void readShippedLimits() {
        DemoShop.files(shop);
        limits = DemoShop.read(shop).energy();
    }

    private static CondensingRise rise(String degrees) {
        return new CondensingRise(new BigDecimal(degrees));
    }

    private static IceNeed need(String poundsADay) {
        return new IceNeed(new SourcedValue(Figure.term(new BigDecimal(poundsADay), "lb"), Provenance.OWN));
    }

    private static BigDecimal rounded(Figure figure, int decimals) {
        return new SourcedValue(figure, Provenance.OWN).value(decimals);
    }

    private static EnergyLimit limit(String make, String build, String cooling, LocalDate made, String harvest) {
        return limits.find(Machine.Make.valueOf(make), EnergyLimit.Build.valueOf(build),
                Machine.Cooling.valueOf(cooling), made, new BigDecimal(harvest)).orElseThrow();
    }

    /** Of a machine of 2018 or later: 10 CFR 431.136(c) and (d), most rows from memory, worked by hand. */
    @ParameterizedTest
    @CsvSource({"BATCH, HEAD, AIR, 250, 6.9175", "BATCH, HEAD, AIR, 500, 5.8000", "BATCH, HEAD, AIR, 800, 5.0460",
            "BATCH, HEAD, AIR, 1000, 4.9200", "BATCH, HEAD, AIR, 1500, 4.6100", "BATCH, HEAD, WATER, 250, 5.5050",
            "BATCH, HEAD, WATER, 500, 4.8450", "BATCH, HEAD, WATER, 1000, 4.1400",
            "BATCH, REMOTE_CONDENSER, AIR, 500, 6.2600", "BATCH, REMOTE_CONDENSER, AIR, 988, 4.59",
            "BATCH, SELF_CONTAINED, AIR, 100, 10.1000", "BATCH, SELF_CONTAINED, AIR, 150, 8.6205",
            "BATCH, SELF_CONTAINED, AIR, 250, 7.35", "BATCH, SELF_CONTAINED, WATER, 150, 6.6500",
            "CONTINUOUS, HEAD, AIR, 250, 7.6175", "CONTINUOUS, HEAD, AIR, 500, 6.6300",
            "CONTINUOUS, HEAD, WATER, 500, 5.1450", "CONTINUOUS, REMOTE_CONDENSER, AIR, 500, 6.80",
            "CONTINUOUS, REMOTE_COMPRESSOR, AIR, 500, 7.00", "CONTINUOUS, SELF_CONTAINED, AIR, 150, 9.7200",
            "CONTINUOUS, SELF_CONTAINED, AIR, 300, 7.5980", "CONTINUOUS, SELF_CONTAINED, WATER, 500, 6.0900"})
    void limit_machineOf2020_byTheFormula(String make, String build, String cooling, String harvest, String expected) {
        EnergyLimit limit = limit(make, build, cooling, MADE_2020, harvest);

        assertThat(EnergyRate.ofLimit(limit, new BigDecimal(harvest)).kilowattHours().value(4))
                .isEqualByComparingTo(expected);
    }

    /**
     * The yearly energies that a utility's work paper of June 2012 publishes for 10 CFR 431.136(b); a duty of 75 % follows from
     * them.
     */
    @ParameterizedTest
    @CsvSource({"SELF_CONTAINED, 150, 10.965, 4503", "HEAD, 250, 8.11, 5550", "HEAD, 350, 7.25, 6946",
            "HEAD, 450, 6.395, 7878"})
    void year_publishedWorkPaper_matchesToTheLastDigit(String build, String harvest, String rate, String expected) {
        EnergyRate energy = EnergyRate.ofLimit(limit("BATCH", build, "AIR", MADE_2015, harvest),
                new BigDecimal(harvest));
        EnergyUse use = new EnergyUse(energy,
                IceNeed.duty(new BigDecimal(harvest), Percent.of("75"), Provenance.PUBLISHED), YEAR, usd("0.146"));

        assertThat(energy.kilowattHours().value(3)).isEqualByComparingTo(rate);
        assertThat(rounded(use.clean(), 0)).isEqualByComparingTo(expected);
        assertThat(use.saved(CLEAN, CLEAN).mark()).isEqualTo(Provenance.PUBLISHED);
    }

    /** At every break of the rows from memory both formulas agree within 0.006 kWh: a slip of the pen would show. */
    @Test
    void limit_everyBreak_bothSidesAgree() {
        List<EnergyLimit> sorted = limits.limits().stream().sorted(Comparator.comparing(EnergyLimit::from)).toList();
        int breaks = 0;
        for (EnergyLimit left : sorted) {
            for (EnergyLimit right : sorted) {
                if (left.made().contains(MADE_2020) && left.below().compareTo(right.from()) == 0
                        && left.make() == right.make()
                        && left.build() == right.build() && left.cooling() == right.cooling()
                        && left.made().equals(right.made())) {
                    assertThat(left.energy().at(left.below(), "").exact().doubleValue()).as(left + " " + right)
                            .isEqualTo(right.energy().at(left.below(), "").exact().doubleValue(), within(0.0061));
                    breaks++;
                }
            }
        }
        assertThat(breaks).isEqualTo(23);
    }

    /** 10 CFR 431.136(c), (d): by the formulas. */
    @ParameterizedTest
    @CsvSource({"BATCH, HEAD, 500, 189.0", "BATCH, HEAD, 2500, 145", "CONTINUOUS, HEAD, 2500, 130.5",
            "CONTINUOUS, SELF_CONTAINED, 2500, 90", "BATCH, SELF_CONTAINED, 2500, 112"})
    void limit_condenserWater_byTheFormula(String make, String build, String harvest, String gallons) {
        BigDecimal rate = new BigDecimal(harvest);
        Line line = limit(make, build, "WATER", MADE_2020, harvest).condenserWater().orElseThrow();

        assertThat(new SourcedValue(line.at(rate, "gal"), Provenance.PUBLISHED).value(2)).isEqualByComparingTo(gallons);
    }

    @Test
    void limit_airCooled_hasNoCondenserWaterAndSaysWhereItStands() {
        EnergyLimit limit = limit("BATCH", "HEAD", "AIR", MADE_2020, "500");

        assertThat(limit.condenserWater()).isEmpty();
        assertThat(limit.mark()).isEqualTo(Provenance.FROM_MEMORY);
        assertThat(limit.source()).isEqualTo("10 CFR 431.136(c)");
        assertThat(limit("BATCH", "HEAD", "WATER", MADE_2020, "500").mark()).isEqualTo(Provenance.PUBLISHED);
    }

    /** A remote machine is taken for one with its compressor at hand, whose limit is the lower. */
    @Test
    void rate_ofAMachine_byItsFormAndTheDayItWasMade() {
        Machine machine = RatesFixture.site().machines().getFirst();

        EnergyRate rate = limits.rate(machine, MADE_2020).orElseThrow();

        assertThat(rate.limit().orElseThrow().build()).isEqualTo(EnergyLimit.Build.of(machine.form()));
        assertThat(EnergyLimit.Build.of(Machine.Form.REMOTE)).isEqualTo(EnergyLimit.Build.REMOTE_CONDENSER);
        assertThat(limits.rate(machine, LocalDate.of(2009, 12, 31))).isEmpty();
    }

    /**
     * Under the work of a machine without losses ({@link HeatBalance}: 1.0113 kWh from 15 F to 105 F) nobody read a nameplate
     * right.
     */
    @ParameterizedTest
    @CsvSource({"0.99, true", "0.058, true", "1, false", "5.8, false", "40, false", "40.1, true", "580, true"})
    void nameplate_impossible_isRefused(String kilowattHours, boolean refused) {
        var rate = EnergyRate.ofNameplate(new BigDecimal(kilowattHours), Place.NOWHERE);

        if (refused) {
            assertThat(rate.problems()).extracting(Problem::code).containsExactly(Code.OUT_OF_RANGE);
            assertThat(rate.problems().getFirst().text()).contains("for 100 lb, not for a day");
        } else {
            assertThat(rate.orElseThrow().kilowattHours().mark()).isEqualTo(Provenance.OWN);
            assertThat(rate.orElseThrow().limit()).isEqualTo(Optional.empty());
        }
    }

    /** Derived from the published row 95 F to 105 F, worked out apart from the program. */
    @ParameterizedTest
    @CsvSource({"5, 1.088083", "10, 1.182796", "15, 1.284916", "20, 1.395349", "25, 1.515152"})
    void rise_energyForAPound_byTheModel(String degrees, double factor) {
        assertThat(rise(degrees).energy().exact().doubleValue()).isEqualTo(factor, within(5e-7));
    }

    /** Published: 7 % less capacity, 10 % more power, efficiency 16 % lower (15.5 % before it was rounded). */
    @Test
    void rise_tenDegrees_matchesThePublishedRow() {
        assertThat(rise("10").capacity().exact().doubleValue()).isEqualTo(0.93, within(1e-12));
        assertThat(1 / rise("10").energy().exact().doubleValue()).isEqualTo(0.845455, within(1e-6));
        assertThat(1 - 1 / rise("10").energy().exact().doubleValue()).isEqualTo(0.155, within(5e-4));
        assertThatIllegalArgumentException().isThrownBy(() -> rise("30.1"));
        assertThatIllegalArgumentException().isThrownBy(() -> rise("-1"));
    }

    /** Worked out apart from the program: H 500, 250 lb a day, 5.80 kWh, $0.146. */
    @Test
    void year_dirtyCondenser_costsWhatTheModelSays() {
        EnergyUse use = new EnergyUse(EnergyRate.ofNameplate(new BigDecimal("5.80"), Place.NOWHERE).orElseThrow(),
                need("250"), YEAR, usd("0.146"));

        assertThat(rounded(use.clean(), 1)).isEqualByComparingTo("5292.5");
        assertThat(use.saved(CLEAN, CLEAN).mark()).isEqualTo(Provenance.OWN);
        assertThat(Amounts.plain(use.saved(CLEAN, CLEAN).amount())).isEqualTo("0.00");
        assertThat(use.saved(rise("10"), CLEAN).mark()).isEqualTo(Provenance.DERIVED);
        assertThat(Amounts.plain(use.saved(rise("10"), CLEAN).amount())).isEqualTo("141.25");
        assertThat(Amounts.plain(use.saved(CLEAN, rise("10")).amount())).isEqualTo("-141.25");
        String how = use.saved(rise("10"), CLEAN).how().text(RatesFixture.USD);
        assertThat(HowReader.evaluate(how)).isEqualByComparingTo("141.25");
    }

    /** 9.8 kWh for 100 lb, 100 000 lb a year: 9,800 kWh (published table of federal purchasing, read where it is quoted). */
    @Test
    void year_federalPurchasing_matchesThePublishedTable() {
        EnergyUse use = new EnergyUse(EnergyRate.ofNameplate(new BigDecimal("9.8"), Place.NOWHERE).orElseThrow(),
                need("1000"), 100, usd("0.09"));

        assertThat(rounded(use.clean(), 0)).isEqualByComparingTo("9800");
    }

    /** By hand: evenly from 0 to a year's dirt, then level. */
    @ParameterizedTest
    @CsvSource({"0, 12, 0.0, 5.0, 10.0", "12, 12, 0.0, 10.0, 20.0", "30, 60, 0.0, 10.0, 20.0",
            "0, 1, 0.0, 0.417, 0.833", "6, 12, 0.0, 8.75, 17.5"})
    void rise_monthsSinceBrushed_gathersOverAYear(double from, double months, String low, String middle, String high) {
        assertThat(rise(from, months, CleaningSchedule.NEVER)).extracting(CondensingRise::fahrenheit)
                .usingElementComparator(Comparator.naturalOrder())
                .containsExactly(new BigDecimal(low), new BigDecimal(middle), new BigDecimal(high));
    }

    @Test
    void rise_brushedOnACalendar_isTheMeanOfAnInterval() {
        assertThat(rise(30, 12, CleaningSchedule.every(6))).isEqualTo(rise(0, 6, CleaningSchedule.NEVER));
        assertThat(rise(30, 12, CleaningSchedule.every(18))).isEqualTo(rise(0, 12, CleaningSchedule.NEVER));
    }

    /** Calls do not brush. */
    private static List<CondensingRise> rise(double from, double months, CleaningSchedule care) {
        return CondensingRise.range(MeanDirt.of(machine(CLOCK, from), StopPolicy.RESTARTS, months, care));
    }

    private static MachineRisk machine(FoulingLife clock, double brushed) {
        return new MachineRisk(0, Optional.of(clock), brushed, clock, 0);
    }

    /** Where calls brush, by the shares of condensers of each age that are followed through small steps of time. */
    @ParameterizedTest
    @CsvSource({"1, 18.5, 12", "1, 12, 12", "1, 0, 12", "1, 2.5, 3", "1.2, 18.5, 12", "3, 40, 36"})
    void dirt_callsBrush_asSteppedThrough(double faster, double age, double months) {
        FoulingLife clock = CLOCK.faster(faster);

        assertThat(MeanDirt.of(machine(clock, age), StopPolicy.RESETS, months, CleaningSchedule.NEVER))
                .isCloseTo(stepped(clock, age, months), within(2e-3));
    }

    private static double stepped(FoulingLife clock, double age, double months) {
        int steps = 2000;
        double step = months / steps;
        double[] fresh = new double[steps + 1];
        double old = 1;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double stop = 1 - Math.exp(-hazard(clock, age + (i + 1) * step) + hazard(clock, age + i * step));
            double renewed = old * stop;
            old -= renewed;
            sum += old * Math.min(1, (age + (i + 0.5) * step) / 12);
            for (int k = i; k > 0; k--) {
                double stopped = 1 - Math.exp(-hazard(clock, k * step) + hazard(clock, (k - 1) * step));
                renewed += fresh[k - 1] * stopped;
                fresh[k] = fresh[k - 1] * (1 - stopped);
                sum += fresh[k] * Math.min(1, (k - 0.5) * step / 12);
            }
            fresh[0] = renewed;
        }
        return sum / steps;
    }

    private static double hazard(FoulingLife clock, double months) {
        return Math.pow(months / clock.scale(), clock.shape());
    }

    /** By hand: 480 lb a day, 1.4 stops of 30 hours: 1.4 x 30/24 x 480 = 840 lb, 42 bags. */
    @Test
    void ice_notMadeWhileTheMachineStands_isBoughtInBags() {
        IceLost lost = new IceLost(need("480"), new BigDecimal("20"), usd("6.50"));

        SourcedValue standing = lost.standing(new BigDecimal("1.4"), new BigDecimal("30"), Provenance.COMMON_PRACTICE);
        assertThat(standing.value(0)).isEqualByComparingTo("840");
        assertThat(Amounts.plain(lost.bought(standing).amount())).isEqualTo("273.00");
        assertThat(lost.bought(standing).mark()).isEqualTo(Provenance.COMMON_PRACTICE);
    }
}
