package icequill.shop;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.money.Amounts;
import icequill.party.TaxBasis;
import icequill.problem.Place;
import icequill.tax.TaxPlace;
import icequill.tax.TaxRate;
import icequill.tax.TaxTotal;
import icequill.tax.TaxTotals;
import icequill.tax.Taxability;
import icequill.tax.Taxable;
import icequill.work.ChargeClass;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shipped places against the statutes whose style they follow: labor of 200.00 and parts of 50.00 on one visit. */
class TaxPlacesTest {

    @TempDir
    Path temporary;

    private ShopFolder shop = DemoShop.read(Path.of("none"));

    @BeforeEach
    void newShop() {
        shop = DemoShop.read(DemoShop.files(temporary.resolve("shop")));
    }

    /**
     * N.Y. Tax Law 1105(c)(3): labor and parts are taxed, 250.00 (so is Texas, Tax Code 151.0101(a)(5)). 18 CCR 1546(b): parts
     * above a tenth of the whole, separately stated, 50.00. F.A.C. 12A-1.006: the whole, because a part was furnished, 250.00.
     * A place without sales tax: nothing. 8.875 % of 250 is 22.1875, 8.75 % of 50 is 4.375, 7 % of 250 is 17.50.
     */
    @ParameterizedTest
    @CsvSource({"alder-county, 250.00, 22.19", "ceniza-county, 50.00, 4.38", "palma-county, 250.00, 17.50",
            "fir-county, 0.00, 0.00"})
    void laborAndParts_areTaxedAsInTheState(String place, String base, String tax) {
        Map<ChargeClass, MonetaryAmount> visit = Map.of(ChargeClass.REPAIR, usd("200"), ChargeClass.PARTS, usd("50"));

        List<TaxTotal> totals = TaxTotals.of(visit.entrySet().stream()
                .flatMap(line -> taxable(place, line.getKey(), line.getValue()).stream()).toList(), TaxBasis.INVOICE,
                USD);

        assertThat(Amounts.plain(Amounts.sum(totals.stream().map(TaxTotal::base).toList(), USD))).isEqualTo(base);
        assertThat(Amounts.plain(Amounts.sum(totals.stream().map(TaxTotal::tax).toList(), USD))).isEqualTo(tax);
    }

    /** In Florida's style labor alone is not taxed. */
    @Test
    void laborWithoutParts_isNotTaxedInFloridasStyle() {
        assertThat(rule("palma-county", ChargeClass.REPAIR).taxability())
                .isEqualTo(Taxability.TAXABLE_IF_PARTS_ON_VISIT);
    }

    /** Parts are on the visit. */
    private Optional<Taxable> taxable(String place, ChargeClass chargeClass, MonetaryAmount amount) {
        TaxPlace.Rule rule = rule(place, chargeClass);
        return switch (rule.taxability()) {
        case TAXABLE, TAXABLE_IF_PARTS_ON_VISIT -> Optional.of(new Taxable(rate(rule), amount));
        case EXEMPT, SELLER_CONSUMES -> Optional.empty();
        };
    }

    private static TaxRate rate(TaxPlace.Rule rule) {
        return rule.rate();
    }

    private TaxPlace.Rule rule(String place, ChargeClass chargeClass) {
        return Optional.ofNullable(shop.taxes().orElseThrow()
                .at(LocalDate.of(2026, 5, 13), Optional.of(place), Place.NOWHERE).orElseThrow().rules()
                .get(chargeClass)).orElseThrow();
    }
}
