package icequill.agreement;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.explain.HowReader;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An agreement that goes on by the month; days and cents worked by hand. */
class MonthByMonthTest {

    private static final Term YEAR = new Term(LocalDate.of(2026, 1, 31), 12);

    /** The first month after the term begins on 31 January 2027, the next on 28 February, the one after on 31 March. */
    @ParameterizedTest
    @CsvSource({"2026-12-01, 2027-01-30", "2026-12-31, 2027-01-30", "2027-01-01, 2027-02-27", "2027-01-28, 2027-02-27",
            "2027-01-29, 2027-03-30", "2027-02-10, 2027-03-30"})
    void lastDay_thirtyDaysOfNotice_theNextEndOfAMonthThatLeavesThem(LocalDate noticed, LocalDate last) {
        MonthByMonth months = new MonthByMonth(YEAR, 30, Optional.of(noticed));

        assertThat(months.lastDay()).contains(last);
        assertThat(months.contains(last)).isEqualTo(last.isAfter(YEAR.lastDay()));
        assertThat(months.contains(last.plusDays(1))).isFalse();
    }

    /** 1,000.00 / 12 is 83.33 with four cents over, and begins anew after twelve months. */
    @Test
    void payments_thousandAYear_aMonthEachFromTheEndOfTheTerm() {
        List<Installment> payments = new MonthByMonth(YEAR, 30, Optional.empty()).payments(LocalDate.of(2028, 1, 31),
                usd("1000"), Set.of());

        assertThat(payments).extracting(payment -> Amounts.plain(payment.amount())).containsExactly("83.34", "83.34",
                "83.34", "83.34", "83.33", "83.33", "83.33", "83.33", "83.33", "83.33", "83.33", "83.33", "83.34");
        assertThat(payments).extracting(payment -> payment.due().toString()).startsWith("2027-01-31", "2027-02-28",
                "2027-03-31", "2027-04-30");
        assertThat(payments).extracting(Installment::number).startsWith(1001, 1002).endsWith(1013);
        assertThat(payments).allSatisfy(payment -> assertThat(HowReader.evaluate(payment.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(payment.amount())));
    }

    /** Notice on 10 February ends it on 30 March: the months of 31 January and 28 February are left. */
    @Test
    void payments_afterNotice_noneForMonthsThatDoNotCome() {
        assertThat(new MonthByMonth(YEAR, 30, Optional.of(LocalDate.of(2027, 2, 10)))
                .payments(LocalDate.of(2028, 1, 31), usd("1000"), Set.of())).extracting(Installment::number)
                .containsExactly(1001, 1002);
        assertThat(new MonthByMonth(YEAR, 30, Optional.of(LocalDate.of(2026, 12, 1)))
                .payments(LocalDate.of(2028, 1, 31), usd("1000"), Set.of())).isEmpty();
    }

    @Test
    void payments_openMonths_theYearsPriceInThose() {
        assertThat(new MonthByMonth(YEAR, 30, Optional.empty()).payments(LocalDate.of(2028, 1, 30), usd("1000"),
                EnumSet.of(Month.JUNE, Month.JULY, Month.AUGUST)))
                .extracting(payment -> payment.number() + " " + Amounts.plain(payment.amount()))
                .containsExactly("1006 333.34", "1007 333.33", "1008 333.33");
    }

    /** A term of five years, and the sixth year after it: 131 months are over when the 132nd begins. */
    @Test
    void until_elevenYears_allOfThem() {
        Term fiveYears = new Term(LocalDate.of(2026, 1, 31), 60);
        LocalDate day = LocalDate.of(2036, 12, 31);

        Term until = new MonthByMonth(fiveYears, 30, Optional.empty()).until(day);

        assertThat(until.lastDay()).isEqualTo("2037-01-30");
        assertThat(until.lastOfMonth(day)).isEqualTo("2037-01-30");
    }

    @Property(tries = 300, seed = "21")
    void payments_ofTwelveMonths_addUpToTheYear(@ForAll @IntRange(min = 0, max = 5_000_000) int cents,
            @ForAll @IntRange(min = 1, max = 31) int day) {
        MonthByMonth months = new MonthByMonth(new Term(LocalDate.of(2026, 1, day), 12), 30, Optional.empty());

        List<Installment> payments = months.payments(months.term().renewal().plusMonths(12).minusDays(1),
                usd(BigDecimal.valueOf(cents, 2).toPlainString()), Set.of());

        assertThat(payments).hasSize(12);
        assertThat(Amounts.number(Amounts.sum(payments.stream().map(Installment::amount).toList(), USD)))
                .isEqualByComparingTo(BigDecimal.valueOf(cents, 2));
    }
}
