package icequill.pricer;

import static icequill.RatesFixture.AFTER_HOURS;
import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.all;
import static icequill.RatesFixture.bands;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.RatesFixture.usd;
import static icequill.VisitBuilder.spell;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.Site;
import icequill.rates.Counting;
import icequill.rates.Counting.Overtime;
import icequill.rates.Counting.Per;
import icequill.rates.Grade;
import icequill.rates.HourPrices;
import icequill.rates.LaborRates;
import icequill.rates.Rates;
import icequill.rates.ServiceCallRates;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.MonetaryAmount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ways of counting time, worked out by hand from the shop's rules: service call 52, 78, 104 by band, labor 98, 147, 196, helper 58,
 * 87, 116, at least 60 minutes of the lead, increments of 15; each changed in one way.
 */
class TimeRulesTest {

    private static final Counting BY_PERSON = new Counting(all(new BigDecimal("15")), Per.PERSON, Optional.empty());
    private static final Counting OVERTIME = new Counting(all(new BigDecimal("15")), Per.PERSON,
            Optional.of(new Overtime(480, AFTER_HOURS)));
    private static final Map<String, Integer> HOUR = all(60);
    private static final Map<String, MonetaryAmount> NONE = Map.of();

    /** 78.00 + 120 min at 147.00; in standard hours the minimum is still 60. */
    @Test
    void minimumByBandOfArrival() {
        Rates rates = labor(BY_PERSON, Map.of("standard", 60, "after-hours", 120, "sundays-and-holidays", 60), NONE,
                NONE);

        assertThat(nets(visit().lead("2026-05-13T17:00", "2026-05-13T18:00"), rates)).containsExactly("78.00",
                "294.00");
        assertThat(nets(visit().lead("2026-05-13T10:00", "2026-05-13T10:30"), rates)).containsExactly("52.00",
                "98.00");
    }

    /** 70 minutes: in steps of 15 to 75 (122.50) in standard hours, of 30 to 90 (220.50) after them. */
    @Test
    void incrementByBandOfArrival() {
        Rates rates = labor(new Counting(Map.of("standard", new BigDecimal("15"), "after-hours", new BigDecimal("30"),
                "sundays-and-holidays", new BigDecimal("60")), Per.PERSON, Optional.empty()), HOUR, NONE, NONE);

        assertThat(nets(visit().lead("2026-05-13T10:00", "2026-05-13T11:10"), rates)).containsExactly("52.00",
                "122.50");
        assertThat(nets(visit().lead("2026-05-13T18:00", "2026-05-13T19:10"), rates)).containsExactly("78.00",
                "220.50");
    }

    /** Two leads of 20 minutes: an hour each is 196.00; together 40 minutes are one hour, 98.00. A third makes it 75 minutes. */
    @Test
    void countedByVisit_minimumAndIncrementOnce() {
        Rates rates = labor(new Counting(all(new BigDecimal("15")), Per.VISIT, Optional.empty()), HOUR, NONE, NONE);
        VisitBuilder two = visit().lead("2026-05-13T10:00", "2026-05-13T10:20").lead("2026-05-13T10:00",
                "2026-05-13T10:20");

        assertThat(nets(two, labor(BY_PERSON, HOUR, NONE, NONE))).containsExactly("52.00", "196.00");
        assertThat(nets(two, rates)).containsExactly("52.00", "98.00");
        assertThat(nets(two.lead("2026-05-13T10:00", "2026-05-13T10:25"), rates)).containsExactly("52.00", "122.50");
    }

    /** 52.00 + 130.00 + 30 min at 98.00; into the evening 40 min at 130.00, 20 at 160.00 and 45 at 147.00. */
    @Test
    void firstHour_hasItsOwnPrice() {
        Rates rates = labor(BY_PERSON, HOUR, bands("130", "160", "196"), NONE);

        assertThat(nets(visit().lead("2026-05-13T10:00", "2026-05-13T11:30"), rates)).containsExactly("52.00",
                "130.00", "49.00");
        assertThat(nets(visit().lead("2026-05-13T10:00", "2026-05-13T10:10"), rates)).containsExactly("52.00",
                "130.00");
        assertThat(nets(visit().lead("2026-05-13T16:20", "2026-05-13T18:05"), rates)).containsExactly("52.00",
                "86.67", "53.33", "110.25");
    }

    /** 89.00 + 75 min billed less 30; ten minutes are 60 billed, of which 30 are left; 60 minutes paid for leave none. */
    @ParameterizedTest
    @CsvSource({"30, 11:10, 73.50", "30, 10:10, 49.00", "60, 10:10, 0.00", "480, 11:10, 0.00", "0, 11:10, 122.50"})
    void serviceCall_includesItsFirstMinutes(int minutes, String left, String labor) {
        Rates rates = serviceCall(minutes, Optional.empty());

        PricedVisit priced = priced(visit().lead("2026-05-13T10:00", "2026-05-13T" + left), rates);

        assertThat(nets(priced)).containsExactly("89.00", labor);
        assertThat(priced.lines().getLast().how().reasons().stream().map(Phrase::key)
                .filter("reason.in-service-call"::equals).count()).isEqualTo(minutes == 0 ? 0 : 1);
        assertThat(priced.lines().getFirst().how().reasons().stream().map(Phrase::key)
                .filter("reason.includes-minutes"::equals).count()).isEqualTo(minutes == 0 ? 0 : 1);
    }

    /** The lead came at nine and pays for the 30 minutes; the helper, named first, came at ten: 60 min at 58.00. */
    @Test
    void serviceCall_includesTheFirstPersonsMinutesOnly() {
        Rates rates = serviceCall(30, Optional.empty());

        assertThat(nets(visit()
                .person("helper", spell("2026-05-13T10:00", "2026-05-13T11:00", ChargeClass.CLEANING, Outcome.CHARGED))
                .lead("2026-05-13T09:00", "2026-05-13T11:00"), rates)).containsExactly("89.00", "58.00", "147.00");
    }

    /** 30 minutes paid for and the other 30 of the first hour at 130.00: 65.00; then 15 min at 98.00. */
    @Test
    void serviceCallWithMinutes_andFirstHour() {
        Rates hour = labor(BY_PERSON, HOUR, bands("130", "160", "196"), NONE);
        Rates rates = new Rates(USD, hour.labor(), serviceCall(30, Optional.empty()).serviceCall(), hour.materials(),
                hour.tasks(), hour.adjustments(), hour.plans());

        assertThat(nets(visit().lead("2026-05-13T10:00", "2026-05-13T11:10"), rates)).containsExactly("89.00",
                "65.00", "24.50");
    }

    /** 8 h at 98.00 are 784.00, two more at 147.00 are 294.00; a Sunday at 196.00 stays one. */
    @Test
    void overtime_isDearerNeverCheaper() {
        Rates rates = labor(OVERTIME, HOUR, NONE, NONE);

        PricedVisit wednesday = priced(visit().lead("2026-05-13T07:00", "2026-05-13T17:00"), rates);

        assertThat(nets(wednesday)).containsExactly("52.00", "784.00", "294.00");
        assertThat(wednesday.lines().getLast().how().reasons()).extracting(Phrase::key)
                .containsExactly("reason.overtime");
        assertThat(nets(visit().lead("2026-05-10T07:00", "2026-05-10T17:00"), rates)).containsExactly("104.00",
                "1960.00");
        // Each person has eight hours of his own.
        assertThat(nets(visit().lead("2026-05-13T07:00", "2026-05-13T12:00").lead("2026-05-13T12:00",
                "2026-05-13T17:00"), rates)).containsExactly("52.00", "980.00");
    }

    /** An hour of travel at 65.00 and one of repair at 98.00. */
    @Test
    void travel_hasItsOwnPrice() {
        Rates rates = labor(BY_PERSON, HOUR, NONE, bands("65", "97.5", "130"));

        assertThat(nets(visit().person("lead",
                spell("2026-05-13T10:00", "2026-05-13T11:00", ChargeClass.REPAIR, Outcome.CHARGED),
                spell("2026-05-13T11:00", "2026-05-13T12:00", ChargeClass.TRAVEL, Outcome.CHARGED)), rates))
                .containsExactly("52.00", "98.00", "65.00");
    }

    /** The site is 8 miles away: 16 miles at 1.85 are 29.60. */
    @Test
    void miles_bothWays_areALineOfTheirOwn() {
        PricedVisit priced = priced(visit().lead("2026-05-13T10:00", "2026-05-13T10:10"),
                serviceCall(0, Optional.of(usd("1.85"))));

        assertThat(nets(priced)).containsExactly("89.00", "29.60", "98.00");
        assertThat(Amounts.plain(priced.lines().get(1).cost().amount())).isEqualTo("0.00");
    }

    /** Friday in standard hours, Saturday after hours: 89.00 and 120.00, and 29.60 of miles each; the labor is what it was. */
    @Test
    void serviceCall_eachDayPaysItsOwn() {
        VisitBuilder twoDays = visit()
                .stay("Ada Quill", "lead",
                        spell("2026-05-16T10:00", "2026-05-16T11:00", ChargeClass.REPAIR, Outcome.CHARGED))
                .stay("Ada Quill", "lead",
                        spell("2026-05-15T10:00", "2026-05-15T11:00", ChargeClass.REPAIR, Outcome.CHARGED))
                .person("helper",
                        spell("2026-05-15T16:00", "2026-05-15T17:00", ChargeClass.REPAIR, Outcome.CHARGED));

        PricedVisit priced = priced(twoDays, serviceCall(30, true, Optional.of(usd("1.85"))));

        assertThat(nets(priced)).containsExactly("89.00", "29.60", "120.00", "29.60", "49.00", "147.00", "58.00");
        assertThat(priced.lines().get(2).how().reasons()).extracting(Phrase::key).contains("reason.further-day");
        assertThat(priced.lines().getFirst().how().reasons()).extracting(Phrase::key)
                .doesNotContain("reason.one-trip", "reason.further-day");
        assertThat(Amounts.plain(priced.lines().get(2).cost().amount())).isEqualTo("11.60");
    }

    /** Sixty minutes at a wage of 46.50, and 45 after hours at 70.00: 46.50 + 52.50. */
    @Test
    void wage_byBand() {
        Rates usual = rates();
        Grade lead = usual.labor().grades().getFirst();
        Rates rates = with(usual, new LaborRates(usual.labor().bands(), usual.labor().week(),
                List.of(new Grade(lead.id(), lead.name(),
                        new HourPrices(lead.hourly().work(), NONE, NONE, bands("46.5", "70", "90")), HOUR, Set.of(),
                        lead.place())),
                BY_PERSON, usual.labor().crew()));

        PricedVisit priced = priced(visit().lead("2026-05-13T16:00", "2026-05-13T17:45"), rates);

        assertThat(priced.lines().stream().skip(1).map(line -> Amounts.plain(line.cost().amount())))
                .containsExactly("46.50", "52.50");
    }

    @Test
    void everyLine_explainsItsNetAndCost() {
        Rates hour = labor(OVERTIME, HOUR, bands("130", "160", "196"), bands("65", "97.5", "130"));
        Rates rates = new Rates(USD, hour.labor(), serviceCall(20, Optional.of(usd("1.85"))).serviceCall(),
                hour.materials(), hour.tasks(), hour.adjustments(), hour.plans());

        PricedVisit priced = priced(visit().person("lead",
                spell("2026-05-13T06:00", "2026-05-13T11:00", ChargeClass.REPAIR, Outcome.CHARGED),
                spell("2026-05-13T11:00", "2026-05-13T12:00", ChargeClass.TRAVEL, Outcome.CHARGED),
                spell("2026-05-13T12:00", "2026-05-13T18:00", ChargeClass.REPAIR, Outcome.CHARGED))
                .classDiscount("ten-off"), rates);

        assertThat(priced.lines()).hasSizeGreaterThan(6).allSatisfy(line -> {
            assertThat(HowReader.evaluate(line.how().text(USD))).isEqualByComparingTo(Amounts.number(line.net()));
            assertThat(HowReader.evaluate(line.cost().how().text(USD)))
                    .isEqualByComparingTo(Amounts.number(line.cost().amount()));
        });
    }

    /**
     * Of the owner's cost: 66.8 miles at 0.725 are 48.43; at 45 miles an hour they take 1.4844 hours, of 46.50 each 69.03. A helper beside
     * costs 43.05 (29.00), and whoever writes his travel down is paid by that.
     */
    @Test
    void timeOnTheRoad_isPartOfTheCost() {
        Rates rates = atFortyFiveMilesAnHour();
        Site far = site(RatesFixture.customer(), "33.4");

        assertThat(cost(visit().lead("2026-05-13T10:00", "2026-05-13T11:00"), far, rates)).isEqualTo("117.46");
        assertThat(cost(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").person("helper",
                spell("2026-05-13T10:00", "2026-05-13T11:00", ChargeClass.CLEANING, Outcome.CHARGED)), far, rates))
                .isEqualTo("160.51");
        assertThat(cost(visit().person("lead", spell("2026-05-13T10:00", "2026-05-13T11:00",
                ChargeClass.TRAVEL, Outcome.CHARGED)), far, rates)).isEqualTo("48.43");
    }

    /** Friday and Saturday: twice 48.43 and 69.03, though one service call is charged. Over midnight nobody drives again. */
    @Test
    void timeOnTheRoad_ofEachDay_thoughOneServiceCallIsCharged() {
        Site far = site(RatesFixture.customer(), "33.4");
        VisitBuilder twoDays = visit().stay("Ada Quill", "lead",
                spell("2026-05-15T10:00", "2026-05-15T11:00", ChargeClass.REPAIR, Outcome.CHARGED)).stay("Ada Quill",
                        "lead", spell("2026-05-16T10:00", "2026-05-16T11:00", ChargeClass.REPAIR, Outcome.CHARGED));

        assertThat(cost(twoDays, far, atFortyFiveMilesAnHour())).isEqualTo("234.92");
        assertThat(cost(twoDays, far, rates())).isEqualTo("96.86");
        assertThat(cost(visit().lead("2026-05-15T23:00", "2026-05-16T01:00"), far, rates())).isEqualTo("48.43");
    }

    private static Rates atFortyFiveMilesAnHour() {
        Rates usual = rates();
        ServiceCallRates call = usual.serviceCall();
        return new Rates(USD, usual.labor(),
                new ServiceCallRates(call.zones(), call.beyond(), call.perMile(), call.includes(), call.eachDay(),
                        call.mileCost(), Optional.of(new BigDecimal("45")), call.place()),
                usual.materials(), usual.tasks(), usual.adjustments(), usual.plans());
    }

    private static String cost(VisitBuilder builder, Site site, Rates rates) {
        PricedLine line = Pricer.price(builder.build(), site, rates).orElseThrow().lines().getFirst();
        assertThat(HowReader.evaluate(line.cost().how().text(USD)))
                .isEqualByComparingTo(Amounts.number(line.cost().amount()));
        return Amounts.plain(line.cost().amount());
    }

    private static Rates labor(Counting counting, Map<String, Integer> minimum, Map<String, MonetaryAmount> firstHour,
            Map<String, MonetaryAmount> travel) {
        LaborRates usual = rates().labor();
        return with(rates(), new LaborRates(usual.bands(), usual.week(), usual.grades().stream()
                .map(grade -> grade.id().equals("lead")
                        ? new Grade(grade.id(), grade.name(),
                                new HourPrices(grade.hourly().work(), firstHour, travel, grade.hourly().wage()),
                                minimum, grade.qualified(), grade.place())
                        : grade)
                .toList(), counting, usual.crew()));
    }

    private static Rates serviceCall(int includes, Optional<MonetaryAmount> perMile) {
        return serviceCall(includes, false, perMile);
    }

    private static Rates serviceCall(int includes, boolean eachDay, Optional<MonetaryAmount> perMile) {
        ServiceCallRates usual = rates().serviceCall();
        ServiceCallRates.Zone zone = usual.zones().getFirst();
        return new Rates(USD, rates().labor(),
                new ServiceCallRates(
                        List.of(new ServiceCallRates.Zone(zone.id(), zone.name(), zone.upTo(),
                                bands("89", "120", "150"), zone.place())),
                        usual.beyond(), perMile, includes, eachDay, usual.mileCost(), Optional.empty(), usual.place()),
                rates().materials(), rates().tasks(), rates().adjustments(), rates().plans());
    }

    private static Rates with(Rates usual, LaborRates labor) {
        return new Rates(USD, labor, usual.serviceCall(), usual.materials(), usual.tasks(), usual.adjustments(),
                usual.plans());
    }

    private static PricedVisit priced(VisitBuilder builder, Rates rates) {
        return Pricer.price(builder.build(), site(), rates).orElseThrow();
    }

    private static List<String> nets(VisitBuilder builder, Rates rates) {
        return nets(priced(builder, rates));
    }

    private static List<String> nets(PricedVisit priced) {
        return priced.lines().stream().map(line -> Amounts.plain(line.net())).toList();
    }
}
