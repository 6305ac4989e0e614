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
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.rates.Adjustments;
import icequill.rates.Applies;
import icequill.rates.Fee;
import icequill.rates.Rates;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.OwnPrice;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fees worked out by hand, beside 52.00 for the service call and 98.00 for the least hour. The site is in US-NY. */
class FeesTest {

    private static final Fee.Amount SUPPLIES = new Fee.Part(Percent.of("3"), Set.of(ChargeClass.PARTS),
            Optional.of(usd("5")), Optional.of(usd("25")));
    private static final Applies ALWAYS = new Applies(true, Set.of(), Place.NOWHERE);
    private static final Applies NAMED = new Applies(false, Set.of(), Place.NOWHERE);

    /** 3 % of 224.58 is 6.7374; of 166.50 is 4.995, which is rounded before it is held against the floor. */
    @ParameterizedTest
    @CsvSource({"100.00, 5.00, reason.fee-floor", "224.58, 6.74, reason.surcharge", "1200.00, 25.00, reason.fee-cap",
            "166.50, 5.00, reason.surcharge", "833.50, 25.00, reason.fee-cap", "833.33, 25.00, reason.surcharge"})
    void percentOfAClass_withFloorAndCap(String parts, String fee, String reason) {
        PricedVisit priced = priced(tenMinutes().own(ChargeClass.PARTS, "1",
                new OwnPrice.Given(usd(parts), Optional.empty()), Optional.empty()), fee(SUPPLIES, ALWAYS));

        assertThat(nets(priced)).containsExactly("52.00", "98.00", parts, fee);
        assertThat(priced.lines().getLast().how().reasons()).extracting(Phrase::key).containsExactly(reason);
    }

    @Test
    void nothingOfItsClasses_noFeeAndNoFloor() {
        assertThat(nets(priced(tenMinutes(), fee(SUPPLIES, ALWAYS)))).containsExactly("52.00", "98.00");
    }

    @ParameterizedTest
    @CsvSource({"150.00, 52.00 98.00", "150.01, 52.00 98.00 20.00", "'', 52.00 98.00 20.00"})
    void amount_onEveryVisitOrUnderASum(String under, String nets) {
        Fee.Amount amount = new Fee.Flat(usd("20"), Optional.of(under).filter(text -> !text.isEmpty())
                .map(text -> usd(text)));

        assertThat(nets(priced(tenMinutes(), fee(amount, ALWAYS)))).containsExactly(nets.split(" "));
    }

    @Test
    void nothingCharged_noFee() {
        PricedVisit priced = priced(visit().serviceCall(Outcome.GOODWILL).person("lead",
                VisitBuilder.spell("2026-05-13T10:00", "2026-05-13T10:10", ChargeClass.REPAIR, Outcome.GOODWILL)),
                fee(new Fee.Flat(usd("20"), Optional.empty()), ALWAYS));

        assertThat(nets(priced)).containsExactly("0.00", "0.00");
    }

    /** 10 % off 150.00 is 135.00; the fee of 20.00 bears no class discount; 3 % of 155.00 is 4.65. */
    @Test
    void fees_comeAfterClassDiscountsAndBeforeSurcharges() {
        PricedVisit priced = priced(tenMinutes().classDiscount("ten-off").surcharge("handling").fee("extra"),
                fee(new Fee.Flat(usd("20"), Optional.empty()), NAMED));

        assertThat(nets(priced)).containsExactly("46.80", "88.20", "20.00", "4.65");
    }

    @Test
    void feeThatNoVisitNames_isNotCharged() {
        assertThat(nets(priced(tenMinutes(), fee(new Fee.Flat(usd("20"), Optional.empty()), NAMED)))).containsExactly(
                "52.00", "98.00");
    }

    /** A fee of every visit is left out where it is not allowed; to name it there is a problem. */
    @ParameterizedTest
    @CsvSource({"US-NY, true", "US, true", "US-CT, false", "DE, false"})
    void regions_sayWhereAFeeIsAllowed(String region, boolean allowed) {
        Fee.Amount card = new Fee.Flat(usd("20"), Optional.empty());
        Rates always = fee(card, new Applies(true, Set.of(region), Place.NOWHERE));
        Rates named = fee(card, new Applies(false, Set.of(region), Place.NOWHERE));

        assertThat(nets(priced(tenMinutes(), always))).hasSize(allowed ? 3 : 2);
        assertThat(Pricer.price(tenMinutes().fee("extra").build(), site(), named).problems())
                .extracting(Problem::text).hasSize(allowed ? 0 : 1)
                .allMatch(text -> text.contains("the fee \"extra\" is not allowed in US-NY"));
    }

    @Test
    void unknownFee_isAProblem() {
        assertThat(Pricer.price(tenMinutes().fee("extra").build(), site(), rates()).problems())
                .extracting(Problem::text).singleElement().asString().contains("there is no fee \"extra\"");
    }

    @Test
    void everyFee_explainsItself() {
        PricedVisit priced = priced(tenMinutes().own(ChargeClass.PARTS, "1",
                new OwnPrice.Given(usd("224.58"), Optional.empty()), Optional.empty()), fee(SUPPLIES, ALWAYS));

        assertThat(priced.lines().getLast().how().text(USD))
                .isEqualTo("round(3 % x 224.58 USD; surcharge; 2) = 6.74");
        assertThat(HowReader.evaluate(priced.lines().getLast().how().text(USD))).isEqualByComparingTo("6.74");
    }

    @Test
    void route_ofAVisitOfSeveralDays_isAProblem() {
        assertThat(Pricer.price(visit().route("oak-run").lead("2026-05-13T10:00", "2026-05-13T11:00")
                .lead("2026-05-14T10:00", "2026-05-14T11:00").build(), site(), rates()).problems())
                .extracting(Problem::text).singleElement().asString()
                .contains("on a route, but lasts 2 days", "a visit of one day, or no route");
    }

    private static Rates fee(Fee.Amount amount, Applies applies) {
        Rates usual = rates();
        Adjustments adjustments = usual.adjustments();
        Fee fee = new Fee("extra", Wording.same("extra"), ChargeClass.PARTS, amount, applies);
        return new Rates(USD, usual.labor(), usual.serviceCall(), usual.materials(), usual.tasks(),
                new Adjustments(adjustments.modifiers(), List.of(fee), adjustments.surcharges(),
                        adjustments.classDiscounts(), adjustments.documentDiscounts(), Optional.empty(),
                        Optional.empty(), Optional.empty(), List.of()),
                usual.plans());
    }

    private static VisitBuilder tenMinutes() {
        return visit().lead("2026-05-13T10:00", "2026-05-13T10:10");
    }

    private static PricedVisit priced(VisitBuilder builder, Rates rates) {
        return Pricer.price(builder.build(), site(), rates).orElseThrow();
    }

    private static List<String> nets(PricedVisit priced) {
        return priced.lines().stream().map(line -> Amounts.plain(line.net())).toList();
    }
}
