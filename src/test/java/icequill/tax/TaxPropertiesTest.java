package icequill.tax;

import static icequill.RatesFixture.USD;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.explain.HowReader;
import icequill.money.Amounts;
import icequill.party.TaxBasis;
import icequill.tax.TaxTotal.ComponentTax;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

class TaxPropertiesTest {

    @Property(tries = 300, seed = "324")
    void of_anyAmounts_componentsAlwaysAddUp(
            @ForAll @Size(min = 1, max = 8) List<@BigRange(min = "0.01", max = "9999") @Scale(2) BigDecimal> amounts,
            @ForAll @Size(min = 1, max = 4) List<@BigRange(min = "0.001", max = "9") @Scale(3) BigDecimal> percents,
            @ForAll TaxBasis basis) {
        TaxRate rate = TaxTest.rate(percents.stream().map(BigDecimal::toPlainString).toArray(String[]::new));
        List<Taxable> taxables = amounts.stream().map(amount -> new Taxable(rate, Amounts.of(amount, USD))).toList();

        TaxTotal total = TaxTotals.of(taxables, basis, USD).getFirst();

        assertThat(
                Amounts.sum(total.components().stream().map(ComponentTax::amount).toList(), USD).isEqualTo(total.tax()))
                .isTrue();
        assertThat(HowReader.evaluate(total.how().text(USD))).isEqualByComparingTo(Amounts.number(total.tax()));
    }
}
