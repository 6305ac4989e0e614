package icequill.pricer;

import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.VisitBuilder.spell;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.explain.Fact;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.Site;
import icequill.rates.Rates;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Prices worked out by hand from the shop's rules: service call 52, 78, 104 by band, labor 98, 147, 196, at least 60 minutes,
 * increments of 15. The first one is common practice: brushing a condenser takes ten minutes and costs about 150.
 */
class WorkedExamplesTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            ten minutes: the common-practice 150 | 2026-05-13T10:00 | 2026-05-13T10:10 | 1 | 52.00 98.00         | 150.00
            into the evening                     | 2026-05-13T16:20 | 2026-05-13T18:05 | 1 | 52.00 65.33 159.25  | 276.58
            raised by an increment               | 2026-05-13T16:20 | 2026-05-13T18:10 | 1 | 52.00 81.67 171.50  | 305.17
            the same with two leads              | 2026-05-13T16:20 | 2026-05-13T18:10 | 2 | 52.00 163.33 343.00 | 558.33
            arrival on the edge of the evening   | 2026-05-13T17:00 | 2026-05-13T18:00 | 1 | 78.00 147.00        | 225.00
            arrival one minute earlier           | 2026-05-13T16:59 | 2026-05-13T17:59 | 1 | 52.00 1.63 144.55   | 198.18
            Sunday, clocks go forward            | 2026-03-08T01:30 | 2026-03-08T03:30 | 1 | 104.00 196.00       | 300.00
            Sunday, clocks go back               | 2026-11-01T00:30 | 2026-11-01T02:30 | 1 | 104.00 588.00       | 692.00
            Thanksgiving, a Thursday             | 2026-11-26T10:00 | 2026-11-26T11:00 | 1 | 104.00 196.00       | 300.00
            over midnight into a holiday         | 2026-12-31T23:30 | 2027-01-01T00:30 | 1 | 78.00 73.50 98.00   | 249.50
            """)
    void price_timesOfDay_asWorkedByHand(String name, String arrived, String left, int leads, String nets,
            String total) {
        VisitBuilder builder = visit();
        for (int i = 0; i < leads; i++) {
            builder.lead(arrived, left);
        }

        PricedVisit priced = price(builder);

        assertThat(nets(priced)).containsExactlyElementsOf(List.of(nets.split(" ")));
        assertThat(Amounts.plain(priced.net())).isEqualTo(total);
    }

    @Test
    void price_twoClassesAndOutcomes_oneLineEachAndTopUpToTheFirst() {
        PricedVisit priced = price(visit().person("lead",
                spell("2026-05-13T10:00", "2026-05-13T10:30", ChargeClass.DIAGNOSIS, Outcome.CHARGED),
                spell("2026-05-13T10:30", "2026-05-13T11:10", ChargeClass.REPAIR, Outcome.CALLBACK)));

        // 70 minutes worked, 75 billed: 35 x 98 / 60 = 57.17; 40 x 98 / 60 = 65.33, which the shop bears itself
        assertThat(nets(priced)).containsExactly("52.00", "57.17", "0.00");
        assertThat(Amounts.plain(priced.lines().get(2).list())).isEqualTo("65.33");
        assertThat(Amounts.plain(priced.lines().get(2).allowance())).isEqualTo("65.33");
    }

    @Test
    void price_leadAndHelper_helperHasNoMinimum() {
        PricedVisit priced = price(visit().lead("2026-05-13T10:00", "2026-05-13T10:40").person("helper",
                spell("2026-05-13T10:00", "2026-05-13T10:40", ChargeClass.CLEANING, Outcome.CHARGED)));

        assertThat(nets(priced)).containsExactly("52.00", "98.00", "43.50");
    }

    /** 20 and 25 minutes are 45, billed as one hour; of two people they would be an hour each. */
    @Test
    void price_leftAndCameBack_onePersonWithOneMinimum() {
        PricedVisit one = price(visit().stay("Ada Quill", "lead",
                spell("2026-05-13T14:00", "2026-05-13T14:25", ChargeClass.CLEANING, Outcome.CHARGED))
                .stay("Ada Quill", "lead",
                        spell("2026-05-13T10:00", "2026-05-13T10:20", ChargeClass.CLEANING, Outcome.CHARGED)));
        PricedVisit two = price(visit().lead("2026-05-13T10:00", "2026-05-13T10:20").lead("2026-05-13T14:00",
                "2026-05-13T14:25"));

        assertThat(nets(one)).containsExactly("52.00", "98.00");
        assertThat(one.lines().get(1).how().reasons()).extracting(Phrase::key).containsExactly("reason.minimum");
        assertThat(nets(two)).containsExactly("52.00", "196.00");
    }

    /** The second day's band is dearer: 60 minutes on Saturday; and the one trip is said. */
    @Test
    void price_twoDays_oneTripAndSaidSo() {
        PricedVisit priced = price(visit().stay("Ada Quill", "lead",
                spell("2026-05-15T10:00", "2026-05-15T11:00", ChargeClass.REPAIR, Outcome.CHARGED))
                .stay("Ada Quill", "lead",
                        spell("2026-05-16T10:00", "2026-05-16T11:00", ChargeClass.REPAIR, Outcome.CHARGED)));

        assertThat(nets(priced)).containsExactly("52.00", "98.00", "147.00");
        assertThat(priced.lines().getFirst().how().reasons()).extracting(Phrase::key).contains("reason.one-trip");
        assertThat(price(tenMinutes()).lines().getFirst().how().reasons()).extracting(Phrase::key)
                .doesNotContain("reason.one-trip");
    }

    @ParameterizedTest
    @CsvSource({"8, 52.00", "30, 52.00", "33.4, 68.32", "30.1, 52.48"})
    void price_distance_zoneInclusiveThenBothWaysByTheMile(String miles, String serviceCall) {
        Site far = site(RatesFixture.customer(), miles);

        PricedVisit priced = Pricer.price(tenMinutes().build(), far, rates()).orElseThrow();

        assertThat(nets(priced).getFirst()).isEqualTo(serviceCall);
    }

    @Test
    void price_materialsByMeasure_markupToFourDecimalsThenLineOnce() {
        PricedLine line = price(tenMinutes().material("descaler", "16")).lines().get(2);

        assertThat(Amounts.plain(line.unitPrice().orElseThrow().amount())).isEqualTo("1.8495");
        assertThat(Amounts.plain(line.net())).isEqualTo("29.59");
    }

    @Test
    void price_doseOfATask_bySizeOfTheMachine() {
        PricedLine line = price(tenMinutes().task("head", "descale", Outcome.CHARGED)).lines().get(2);

        assertThat(line.quantity().number()).isEqualByComparingTo("16");
        assertThat(line.machine()).contains("head");
        assertThat(Amounts.plain(line.net())).isEqualTo("29.59");
    }

    @Test
    void price_wholePacks_raisedOncePerVisit() {
        PricedVisit priced = price(tenMinutes().material("bottled-descaler", "20").material("bottled-descaler", "20"));

        assertThat(nets(priced)).containsExactly("52.00", "98.00", "49.00");
    }

    @Test
    void price_classDiscountThenSurcharge_discountedNetsCarryTheSurcharge() {
        // 245.50 less 10 % is 220.95; 3 % of that is 6.63
        PricedVisit priced = price(tenMinutes().serviceCall(Outcome.INCLUDED).modifier("stairs", "0.88")
                .material("valve", "1").classDiscount("ten-off").surcharge("handling"));

        assertThat(Amounts.plain(Amounts.sum(priced.lines().subList(1, 4).stream().map(PricedLine::list).toList(),
                RatesFixture.USD))).isEqualTo("245.50");
        assertThat(nets(priced)).containsExactly("0.00", "88.20", "112.95", "19.80", "6.63");
        assertThat(Amounts.plain(priced.net())).isEqualTo("227.58");
    }

    @Test
    void price_documentDiscount_sharedByLargestRemainder() {
        PricedVisit priced = price(visit().serviceCall(Outcome.INCLUDED)
                .person("lead", spell("2026-05-13T10:00", "2026-05-13T10:10", ChargeClass.REPAIR, Outcome.GOODWILL))
                .material("valve", "1").material("filter", "1").modifier("stairs", "1.6")
                .documentDiscount("ten-dollars"));

        SharedDiscount discount = priced.discount().orElseThrow();
        assertThat(discount.shares().stream().map(Amounts::plain).toList()).containsExactly("0.00", "0.00", "4.97",
                "3.45",
                "1.58");
        assertThat(Amounts.plain(priced.net())).isEqualTo("242.75");
    }

    @Test
    void price_fixedDiscountAboveTheSum_takesTheSumAndNoMore() {
        PricedVisit priced = price(visit().serviceCall(Outcome.GOODWILL)
                .person("lead", spell("2026-05-13T10:00", "2026-05-13T10:10", ChargeClass.REPAIR, Outcome.GOODWILL))
                .material("sanitizer", "10").documentDiscount("ten-dollars"));

        assertThat(Amounts.plain(priced.discount().orElseThrow().amount())).isEqualTo("6.20");
        assertThat(Amounts.plain(priced.net())).isEqualTo("0.00");
    }

    @Test
    void price_nothingCharged_noDiscountAndNoSurcharge() {
        PricedVisit priced = price(visit().serviceCall(Outcome.GOODWILL)
                .person("lead", spell("2026-05-13T10:00", "2026-05-13T10:10", ChargeClass.REPAIR, Outcome.GOODWILL))
                .surcharge("handling").documentDiscount("five-percent"));

        assertThat(priced.discount()).isEmpty();
        assertThat(nets(priced)).containsExactly("0.00", "0.00");
    }

    @Test
    void price_percentDiscount_roundedOnce() {
        PricedVisit priced = price(tenMinutes().material("descaler", "16").documentDiscount("five-percent"));

        // 5 % of 179.59 is 8.9795
        assertThat(Amounts.plain(priced.discount().orElseThrow().amount())).isEqualTo("8.98");
    }

    @Test
    void price_foundNobody_serviceCallAndModifierInsteadOfLabor() {
        PricedVisit priced = price(tenMinutes().modifier("found-nobody", "1"));

        assertThat(nets(priced)).containsExactly("52.00", "35.00");
        // ten minutes at 46.50 an hour were spent all the same
        assertThat(Amounts.plain(priced.lines().get(1).cost().amount())).isEqualTo("7.75");
    }

    @Test
    void price_waiting_minutesOfAnHourlyPrice() {
        assertThat(nets(price(tenMinutes().modifier("waiting", "25"))).getLast()).isEqualTo("40.83");
    }

    @Test
    void price_declinedPart_keptOnRecordWithoutPriceOrCost() {
        PricedLine line = price(tenMinutes().material("valve", "1", Outcome.DECLINED, java.util.Optional.of("head")))
                .lines().getLast();

        assertThat(Amounts.plain(line.list())).isEqualTo("125.50");
        assertThat(Amounts.plain(line.net())).isEqualTo("0.00");
        assertThat(line.cost().amount().isZero()).isTrue();
    }

    @Test
    void price_costOfAVisit_wagesMilesAndMaterials() {
        PricedVisit priced = price(tenMinutes().material("descaler", "16"));

        // 16 miles x 0.725 = 11.60; 10 min x 46.50 / 60 = 7.75; 16 x 1.37 = 21.92
        assertThat(priced.lines().stream().map(line -> Amounts.plain(line.cost().amount())).toList())
                .containsExactly("11.60", "7.75", "21.92");
        assertThat(Amounts.plain(priced.cost())).isEqualTo("41.27");
    }

    @Test
    void price_everyLine_explainsItsNet() {
        PricedVisit priced = price(tenMinutes().material("descaler", "16").material("bottled-descaler", "40")
                .modifier("waiting", "25").classDiscount("ten-off").surcharge("handling"));

        assertThat(priced.lines()).hasSize(6).allSatisfy(line -> {
            String how = line.how().text(RatesFixture.USD);
            assertThat(HowReader.evaluate(how)).isEqualByComparingTo(Amounts.number(line.net()));
            assertThat(HowReader.stated(how)).isEqualByComparingTo(Amounts.number(line.net()));
        });
    }

    @Test
    void price_how_isTheDocumentedGrammar() {
        PricedVisit priced = price(visit().lead("2026-05-13T16:20", "2026-05-13T18:10"));

        assertThat(priced.lines().get(1).how().text(RatesFixture.USD))
                .isEqualTo("round(50 min x 98.00 USD/h / 60 min/h; line; 2) = 81.67");
        assertThat(priced.lines().get(1).how().reasons()).extracting(Phrase::key).containsExactly("reason.band",
                "reason.increment");
        assertThat(priced.lines().get(1).how().reasons().getLast().facts()).containsExactly(Fact.number(110, "min"),
                Fact.number(120, "min"), Fact.number(15, "min"));
    }

    private static VisitBuilder tenMinutes() {
        return visit().lead("2026-05-13T10:00", "2026-05-13T10:10");
    }

    private static PricedVisit price(VisitBuilder builder) {
        return price(builder, rates());
    }

    /** Whatever is worked out, a customer who multiplies a line's quantity by its price comes to the line. */
    private static PricedVisit price(VisitBuilder builder, Rates rates) {
        PricedVisit priced = Pricer.price(builder.build(), site(), rates).orElseThrow();
        assertThat(priced.lines()).allSatisfy(line -> line.unitPrice()
                .ifPresent(price -> assertThat(Amounts.number(line.list())).as(line.toString())
                        .isEqualByComparingTo(product(line.quantity(), price))));
        return priced;
    }

    private static BigDecimal product(Quantity quantity, UnitPrice price) {
        BigDecimal minutes = BigDecimal.valueOf(quantity.unit() == Unit.MINUTE && price.per() == Unit.HOUR ? 60 : 1);
        return quantity.number().multiply(Amounts.number(price.amount())).divide(minutes, 2, RoundingMode.HALF_UP);
    }

    private static List<String> nets(PricedVisit priced) {
        return priced.lines().stream().map(line -> Amounts.plain(line.net())).toList();
    }
}
