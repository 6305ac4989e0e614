package icequill.life.refrigerant;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.life.refrigerant.LeakRate.Method;
import icequill.life.refrigerant.Verdict.Outcome;
import icequill.party.Period;
import icequill.party.Wording;
import icequill.rates.RefrigerantRules;
import icequill.rates.RefrigerantRules.Category;
import icequill.rates.RefrigerantRules.Cylinder;
import icequill.rates.RefrigerantRules.Kind;
import icequill.rates.RefrigerantRules.LeakRule;
import icequill.rates.RefrigerantRules.Mark;
import icequill.work.RefrigerantWork.LeakTest;
import icequill.work.RefrigerantWork.Purpose;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Leak rates worked out by hand, by the two methods of 40 CFR 82.152. */
class MachineLogTest {

    private static final LocalDate START = LocalDate.of(2026, 1, 5);
    private static final LeakRule HFC = new LeakRule("hfc", Wording.same("hfc"),
            new Period(LocalDate.of(2026, 1, 1), Optional.empty()), false, Optional.of(BigDecimal.valueOf(53)),
            BigDecimal.valueOf(15),
            Map.of(Category.COMMERCIAL_REFRIGERATION, BigDecimal.valueOf(20), Category.INDUSTRIAL_PROCESS,
                    BigDecimal.valueOf(30), Category.COMFORT_COOLING, BigDecimal.TEN),
            Mark.SECONDARY, "");
    private static final RefrigerantRules RULES = new RefrigerantRules(
            List.of(new Kind("R-404A", false, BigDecimal.valueOf(3922), false),
                    new Kind("R-290", false, BigDecimal.valueOf(3), false),
                    new Kind("R-22", true, BigDecimal.valueOf(1810), false)),
            List.of(HFC), Optional.empty(), Category.COMMERCIAL_REFRIGERATION,
            List.of(new Cylinder("V-1", "R-404A", LocalDate.of(2026, 2, 1), BigDecimal.valueOf(384))));

    /**
     * Published examples: 10 lb of 100 lb after 180 days (costcalculator.calculator.city, which cuts 20.277 to 20.27); 3 lb of 50 lb after 60
     * days (refguard.co); 2 lb of 50 lb after 30 days (refleaklog.app, 48.7 %). Beyond a year the days are 365.
     */
    @ParameterizedTest
    @CsvSource({"10, 100, 180, 20.28", "3, 50, 60, 36.50", "2, 50, 30, 48.67", "5, 50, 700, 10.00"})
    void annualizing_asPublished(BigDecimal added, BigDecimal charge, int days, BigDecimal percent) {
        List<MachineLog.Entry> log = MachineLog.of(List.of(put(0, charge.toString(), Purpose.FIRST_CHARGE, charge),
                put(days, charge.toString(), Purpose.SERVICE, added)));

        assertThat(log.getFirst().rates()).isEmpty();
        assertThat(rate(log.getLast(), Method.ANNUALIZING).percent()).isEqualByComparingTo(percent);
    }

    /** Of 40: 4; 4 + 6; 4 + 6 + 2; and on day 415 only what was lost from day 51 on, 2 + 1. */
    @Test
    void rollingAverage_addsUpWhatWasLostWithinAYear() {
        List<MachineLog.Entry> log = MachineLog.of(List.of(add(0, "4"), add(50, "6"), add(350, "2"), add(415, "1")));

        assertThat(log).extracting(entry -> rate(entry, Method.ROLLING_AVERAGE).percent().toPlainString())
                .containsExactly("10.00", "25.00", "30.00", "7.50");
        assertThat(log).extracting(entry -> rate(entry, Method.ROLLING_AVERAGE).lost().toPlainString())
                .containsExactly("4", "10", "12", "3");
    }

    /** What was lost 365 days ago is no longer within the year that ends today; 364 days ago it is. */
    @Test
    void rollingAverage_yearEndsWithTheDay() {
        assertThat(rolling(add(0, "4"), add(364, "2"))).isEqualTo("15.00");
        assertThat(rolling(add(0, "4"), add(365, "2"))).isEqualTo("5.00");
    }

    /** A follow-up test that found all leaks mended begins the count anew; an initial one, or one that failed, does not. */
    @Test
    void rollingAverage_beginsAnewOnceAllLeaksAreProvedMended() {
        assertThat(rolling(add(0, "4"), test(10, LeakTest.When.FOLLOW_UP, true), add(100, "2"))).isEqualTo("5.00");
        assertThat(rolling(add(0, "4"), test(10, LeakTest.When.INITIAL, true), add(100, "2"))).isEqualTo("15.00");
        assertThat(rolling(add(0, "4"), test(10, LeakTest.When.FOLLOW_UP, false), add(100, "2"))).isEqualTo("15.00");
    }

    /** 26 of 40 came out and 40 went in: 14 had leaked. Recovered on one visit and put back on the next, it is the same. */
    @Test
    void whatWasRecoveredBefore_isNotLost() {
        MachineLog.Entry together = MachineLog.of(List.of(handled(0, "40", Purpose.SERVICE, "40", "26"))).getFirst();
        List<MachineLog.Entry> apart = MachineLog.of(List.of(handled(0, "40", Purpose.SERVICE, "0", "26"),
                handled(9, "40", Purpose.SERVICE, "40", "0")));

        assertThat(together.lost()).isEqualByComparingTo("14");
        assertThat(apart).extracting(MachineLog.Entry::lost).extracting(BigDecimal::intValueExact)
                .containsExactly(0, 14);
        assertThat(apart.getLast().back()).isEqualByComparingTo("26");
        assertThat(rate(apart.getLast(), Method.ANNUALIZING).percent()).isEqualByComparingTo("35.00");
    }

    /** 15 lb are 240 oz; at the limit itself nothing need be done, and what is compared is not rounded: 20.004 % is above 20 %. */
    @Test
    void verdict_asTheChargeAndTheKindAre() {
        assertThat(verdict("R-404A", "239.9", "200")).isEqualTo(Outcome.TOO_SMALL);
        assertThat(verdict("R-404A", "240", "48")).isEqualTo(Outcome.WITHIN);
        assertThat(verdict("R-404A", "240", "48.01")).isEqualTo(Outcome.ABOVE);
        assertThat(verdict("R-290", "240", "48")).isEqualTo(Outcome.NO_RULE);
        assertThat(verdict("R-22", "240", "48")).isEqualTo(Outcome.NO_RULE);
        assertThat(verdict("R-999", "240", "48")).isEqualTo(Outcome.UNKNOWN_KIND);
    }

    /** 384 were in V-1 on 1 February; the 10 of January are no longer in it: 384 - 12 - 5 + 3. */
    @Test
    void cylinder_balanceFromTheDayItWasWeighed() {
        List<Handled> all = List.of(add(0, "10"), add(30, "12"), handled(60, "40", Purpose.SERVICE, "5", "3"));

        RefrigerantLog log = RefrigerantLog.of(all, all.subList(1, 3), RULES);

        assertThat(log.cylinders()).containsExactly(
                new CylinderLog("R-9", "R-404A", BigDecimal.ZERO, new BigDecimal("3"), Optional.empty()),
                new CylinderLog("V-1", "R-404A", new BigDecimal("17"), BigDecimal.ZERO,
                        Optional.of(new BigDecimal("367"))));
        assertThat(log.kinds()).containsExactly(
                new RefrigerantLog.OfKind("R-404A", new BigDecimal("17"), new BigDecimal("3")));
        assertThat(log.entries()).hasSize(2);
    }

    private static Outcome verdict(String kind, String charge, String added) {
        Handled one = new Handled("v", START, "site", "head", kind, new BigDecimal(charge), new BigDecimal(added),
                Optional.empty(), BigDecimal.ZERO, Optional.empty(), Purpose.SERVICE, Optional.empty(), List.of(),
                Optional.empty(), Optional.empty(), Optional.empty());
        return RefrigerantLog.of(List.of(one), List.of(one), RULES).machines().getFirst().verdict().outcome();
    }

    private static String rolling(Handled... visits) {
        return rate(MachineLog.of(List.of(visits)).getLast(), Method.ROLLING_AVERAGE).percent().toPlainString();
    }

    private static LeakRate rate(MachineLog.Entry entry, Method method) {
        return entry.rates().stream().filter(rate -> rate.method() == method).findFirst().orElseThrow();
    }

    private static Handled add(int day, String ounces) {
        return handled(day, "40", Purpose.SERVICE, ounces, "0");
    }

    private static Handled put(int day, String charge, Purpose purpose, BigDecimal ounces) {
        return handled(day, charge, purpose, ounces.toPlainString(), "0");
    }

    private static Handled test(int day, LeakTest.When when, boolean tight) {
        Handled none = handled(day, "40", Purpose.SERVICE, "0", "0");
        return new Handled(none.visit(), none.day(), none.site(), none.machine(), none.kind(), none.charge(),
                none.added(), none.from(), none.recovered(), none.into(), none.purpose(), none.technician(),
                none.certificates(), none.leak(), none.repair(),
                Optional.of(new LeakTest(when, tight, Optional.empty())));
    }

    private static Handled handled(int day, String charge, Purpose purpose, String added, String recovered) {
        return new Handled("v-" + day, START.plusDays(day), "site", "head", "R-404A", new BigDecimal(charge),
                new BigDecimal(added), Optional.of("V-1").filter(name -> !added.equals("0")),
                new BigDecimal(recovered), Optional.of("R-9").filter(name -> !recovered.equals("0")), purpose,
                Optional.empty(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
