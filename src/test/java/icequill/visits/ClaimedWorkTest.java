package icequill.visits;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.pricer.Pricer;
import icequill.rates.WarrantyPayer;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a payer's rules pay of 52.00 for coming out and 75 minutes of labor, 122.50. */
class ClaimedWorkTest {

    @Test
    void withoutARule_itIsClaimedAtOurPrice() {
        assertThat(allowed(Optional.empty())).isEqualTo("174.50 USD = 174.50");
    }

    /** 52.00 + 75 min x 85.00 / 60 = 106.25. */
    @Test
    void laborByTheHourOfThePayer() {
        assertThat(allowed(rule(Optional.empty())))
                .isEqualTo("52.00 USD + round(75 min x 85.00 USD/h / 60 min/h; line; 2) = 158.25");
    }

    /** 52.00 + 60 min x 85.00 / 60. */
    @Test
    void noMoreMinutesThanThePayerPays() {
        assertThat(allowed(rule(Optional.of(60)))).endsWith(" = 137.00");
    }

    private static Optional<WarrantyPayer> rule(Optional<Integer> most) {
        return Optional.of(new WarrantyPayer("the maker", Optional.of(usd("85.00")), most, 30, Optional.empty()));
    }

    private static String allowed(Optional<WarrantyPayer> rule) {
        return new ClaimedWork("the maker", Pricer.price(
                VisitBuilder.visit().lead("2026-05-13T10:00", "2026-05-13T11:10").build(), RatesFixture.site(),
                RatesFixture.rates()).orElseThrow().lines(), rule, USD).allowed().text(USD);
    }
}
