package icequill.pricer;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.RatesFixture.usd;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.VisitBuilder;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.work.ChargeClass;
import icequill.work.OwnPrice;
import icequill.work.TakenBack;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Lines in one's own words, worked out by hand; beside them 52.00 for the service call and 98.00 for the least hour. */
class OwnLinesTest {

    private static final OwnPrice LIFT = new OwnPrice.MarkedUp(usd("185"), Percent.of("12.5"));
    private static final OwnPrice FREIGHT = new OwnPrice.MarkedUp(usd("38.4"), Percent.ZERO);
    private static final OwnPrice CORE = new OwnPrice.Given(usd("65"), Optional.of(usd("60")));

    /** 185.00 and 12.5 % are 208.125 a day; 1.5 days are 312.1875. */
    @Test
    void costAndMarkup_toFourDecimals_lineRoundedOnce() {
        PricedLine line = priced(tenMinutes().own(ChargeClass.TRAVEL, "1.5", LIFT, Optional.empty())).lines()
                .getLast();

        assertThat(Amounts.plain(line.unitPrice().orElseThrow().amount())).isEqualTo("208.125");
        assertThat(Amounts.plain(line.net())).isEqualTo("312.19");
        assertThat(Amounts.plain(line.cost().amount())).isEqualTo("277.50");
    }

    @Test
    void costWithoutMarkup_isPassedOnAtCost() {
        PricedLine line = priced(tenMinutes().own(ChargeClass.PARTS, "1", FREIGHT, Optional.empty())).lines()
                .getLast();

        assertThat(Amounts.plain(line.net())).isEqualTo("38.40");
        assertThat(Amounts.plain(line.cost().amount())).isEqualTo("38.40");
    }

    @Test
    void priceWithoutCost_saysThatNobodyKnowsIt() {
        PricedLine line = priced(tenMinutes().own(ChargeClass.DISPOSAL, "3",
                new OwnPrice.Given(usd("12.335"), Optional.empty()), Optional.empty())).lines().getLast();

        assertThat(Amounts.plain(line.net())).isEqualTo("37.01");
        assertThat(line.cost().how().reasons()).extracting(Phrase::key).containsExactly("owner.cost-unknown");
    }

    /** 412.37 less 10 % is 371.13; its core goes back in full: 52 + 98 less 10 % are 135.00, and 371.13 - 65.00 = 306.13. */
    @ParameterizedTest
    @EnumSource(TakenBack.class)
    void takenBack_bearsNoDiscountAndNoSurcharge(TakenBack why) {
        PricedVisit priced = priced(tenMinutes()
                .own(ChargeClass.PARTS, "1", new OwnPrice.Given(usd("412.37"), Optional.empty()), Optional.empty())
                .own(ChargeClass.PARTS, "1", CORE, Optional.of(why)).classDiscount("ten-off").surcharge("handling"));

        // 3 % of 46.80 + 88.20 + 371.13 = 506.13 is 15.18
        assertThat(nets(priced)).containsExactly("46.80", "88.20", "371.13", "-65.00", "15.18");
        assertThat(Amounts.plain(priced.net())).isEqualTo("456.31");
        assertThat(Amounts.plain(priced.lines().get(3).cost().amount())).isEqualTo("-60.00");
        assertThat(priced.lines().get(3).how().reasons()).extracting(Phrase::key)
                .containsExactly("reason.back." + why.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** 5 % of 52.00 + 98.00 + 412.37 = 562.37, without the core: 28.12. */
    @Test
    void documentDiscount_isOfWhatIsCharged() {
        PricedVisit priced = priced(tenMinutes()
                .own(ChargeClass.PARTS, "1", new OwnPrice.Given(usd("412.37"), Optional.empty()), Optional.empty())
                .own(ChargeClass.PARTS, "1", CORE, Optional.of(TakenBack.CORE_RETURN))
                .documentDiscount("five-percent"));

        SharedDiscount discount = priced.discount().orElseThrow();
        assertThat(Amounts.plain(discount.amount())).isEqualTo("28.12");
        assertThat(discount.shares().stream().map(Amounts::plain).toList()).containsExactly("2.60", "4.90", "20.62",
                "0.00");
        assertThat(Amounts.plain(priced.net())).isEqualTo("469.25");
    }

    /** 150.00 less three cores of 65.00 is -45.00. */
    @Test
    void moreTakenBackThanCharged_isAProblem() {
        Validated<PricedVisit> priced = Pricer.price(
                tenMinutes().own(ChargeClass.PARTS, "3", CORE, Optional.of(TakenBack.RETURNED_PART)).build(), site(),
                rates());

        assertThat(priced.problems()).extracting(Problem::code).containsExactly(Code.OUT_OF_RANGE);
        assertThat(priced.problems().getFirst().text()).contains("comes to -45.00", "visits/test.yaml:2");
    }

    @Test
    void everyOwnLine_explainsItsNet() {
        PricedVisit priced = priced(tenMinutes().own(ChargeClass.TRAVEL, "1.5", LIFT, Optional.empty())
                .own(ChargeClass.PARTS, "1", CORE, Optional.of(TakenBack.TRADE_IN)));

        assertThat(priced.lines()).hasSize(4).allSatisfy(line -> {
            assertThat(HowReader.evaluate(line.how().text(USD)))
                    .isEqualByComparingTo(Amounts.number(line.net()));
            assertThat(HowReader.evaluate(line.cost().how().text(USD)))
                    .isEqualByComparingTo(Amounts.number(line.cost().amount()));
        });
    }

    private static VisitBuilder tenMinutes() {
        return visit().lead("2026-05-13T10:00", "2026-05-13T10:10");
    }

    private static PricedVisit priced(VisitBuilder builder) {
        return Pricer.price(builder.build(), site(), rates()).orElseThrow();
    }

    private static List<String> nets(PricedVisit priced) {
        return priced.lines().stream().map(line -> Amounts.plain(line.net())).toList();
    }
}
