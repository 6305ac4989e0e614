package icequill.money;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoneyTest {

    /** Half away from zero at the currency's minor units (ISO 4217): cents, none for JPY, mils for KWD. */
    @ParameterizedTest
    @CsvSource({"2.665, USD, 2.67", "2.675, USD, 2.68", "-1.005, USD, -1.01", "1.004999, USD, 1.00", "2.5, JPY, 3",
            "0.0005, KWD, 0.001", "13.125, USD, 13.13"})
    void round_halves_awayFromZeroAtMinorUnits(String exact, String currency, String rounded) {
        CurrencyUnit unit = Currencies.find(currency).orElseThrow();

        assertThat(Rounding.TAX.round(Exact.of(new BigDecimal(exact)), unit)).isEqualTo(new BigDecimal(rounded));
    }

    @Test
    void round_unitPrice_fourDecimalsAtLeast() {
        assertThat(Rounding.UNIT_PRICE.round(Exact.of(new BigDecimal("1.84955")), USD)).isEqualTo("1.8496");
    }

    @ParameterizedTest
    @CsvSource({"USD, true", "XAU, false", "ABC, false", "UYW, false"})
    void find_currency_onlyWithMinorUnits(String code, boolean known) {
        assertThat(Currencies.find(code).isPresent()).isEqualTo(known);
    }

    /** Largest remainder (Hamilton), ties by order; the rows are worked by hand. */
    @ParameterizedTest
    @CsvSource({"100.00, 1:1:1, 33.34 33.33 33.33", "10.00, 125.50:87.25:40.00, 4.97 3.45 1.58",
            "5.00, 33333:33333:33334:1, 1.67 1.66 1.67 0.00", "-10.00, 1:1:1, -3.34 -3.33 -3.33",
            "1000.00, 1:1:1:1:1:1:1:1:1:1:1:1, 83.34 83.34 83.34 83.34 83.33 83.33 83.33 83.33 83.33 83.33 83.33 83.33",
            "0.00, 1:2, 0.00 0.00"})
    void shares_byLargestRemainder_asWorkedByHand(String amount, String weights, String shares) {
        List<BigDecimal> each = Arrays.stream(weights.split(":", -1)).map(BigDecimal::new).toList();

        assertThat(Shares.byLargestRemainder(usd(amount), each).stream().map(Amounts::plain).toList())
                .containsExactlyElementsOf(List.of(shares.split(" ", -1)));
    }

    /**
     * The 120 seats of the vetoed bill of 1792, by the census of 1790 and Hamilton's method: Virginia, Massachusetts,
     * Pennsylvania, North Carolina, New York, Maryland, Connecticut, South Carolina, New Jersey, New Hampshire, Vermont, Georgia,
     * Kentucky, Rhode Island, Delaware (from memory).
     */
    @Test
    void shares_seatsOf1790_asHamiltonApportionedThem() {
        List<BigDecimal> people = IntStream.of(630560, 475327, 432879, 353523, 331589, 278514, 236841, 206236, 179570,
                141822, 85533, 70835, 68705, 68446, 55540).mapToObj(BigDecimal::valueOf).toList();

        assertThat(Shares.byLargestRemainder(BigDecimal.valueOf(120), people, 0).stream().map(BigDecimal::intValue))
                .containsExactly(21, 16, 14, 12, 11, 9, 8, 7, 6, 5, 3, 2, 2, 2, 2);
    }

    @Test
    void shares_impossibleWeights_refused() {
        MonetaryAmount ten = usd("10");
        List<BigDecimal> negative = List.of(BigDecimal.ONE, BigDecimal.ONE.negate());
        List<BigDecimal> zero = List.of(BigDecimal.ZERO);

        assertThatIllegalArgumentException().isThrownBy(() -> Shares.byLargestRemainder(ten, negative));
        assertThatIllegalArgumentException().isThrownBy(() -> Shares.byLargestRemainder(ten, zero));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Shares.byLargestRemainder(usd("0.005"), List.of(BigDecimal.ONE)));
    }

    @Test
    void plain_amounts_alwaysWithMinorUnits() {
        assertThat(Amounts.plain(usd("1250"))).isEqualTo("1250.00");
        assertThat(Amounts.plain(usd("1.8495"))).isEqualTo("1.8495");
        assertThat(Amounts.plain(usd("1E3"))).isEqualTo("1000.00");
    }

    @Test
    void percent_outOfBounds_namesValueAndBounds() {
        assertThatIllegalArgumentException().isThrownBy(() -> Percent.of("1000.1"))
                .withMessage("percent is 1000.1, must be from -1000 to 1000");
        assertThat(Percent.of("7.50")).isEqualTo(Percent.of("7.5"));
    }

    /** The multiples below and above, by hand. */
    @ParameterizedTest
    @CsvSource({"683.82, 5, 685, 680", "682.50, 5, 685, 680", "682.49, 5, 680, 680", "718.20, 5, 720, 715",
            "685, 5, 685, 685", "0.124, 0.01, 0.12, 0.12", "-682.50, 5, -685, -685", "-681, 5, -680, -685"})
    void stepping_toAPriceStep_nearestOrDown(String value, String step, String nearest, String down) {
        assertThat(Stepping.NEAREST.to(Exact.of(new BigDecimal(value)), new BigDecimal(step)))
                .isEqualTo(Exact.of(new BigDecimal(nearest)));
        assertThat(Stepping.DOWN.to(Exact.of(new BigDecimal(value)), new BigDecimal(step)))
                .isEqualTo(Exact.of(new BigDecimal(down)));
    }

    @ParameterizedTest
    @CsvSource({"40, 32, 64", "64, 32, 64", "0.1, 15, 15", "60, 15, 60", "-1, 15, 0"})
    void upToMultiple_nextFullOne(String value, String step, String raised) {
        assertThat(Exact.upToMultiple(Exact.of(new BigDecimal(value)), new BigDecimal(step)))
                .isEqualTo(Exact.of(new BigDecimal(raised)));
    }
}
