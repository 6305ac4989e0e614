package icequill.pricer;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.bands;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.usd;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Period;
import icequill.party.Site;
import icequill.party.Timeline;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.rates.Adjustments;
import icequill.rates.Applies;
import icequill.rates.ClassDiscount;
import icequill.rates.Fee;
import icequill.rates.Grade;
import icequill.rates.HourPrices;
import icequill.rates.LaborRates;
import icequill.rates.RateSchedule;
import icequill.rates.RateSchedule.DatedSheet;
import icequill.rates.RateSheet;
import icequill.rates.Rates;
import icequill.rates.RefrigerantRules;
import icequill.work.Attendance;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sheets over service call 52, 78, 104 and labor 98, 147, 196, worked out by hand. The site "bakery" is of the customer "mill", who
 * belongs to the account "group".
 */
class RateSheetTest {

    private static final Site SITE = RatesFixture.site().of(List.of("mill", "group"));
    private static final LocalDate DAY = LocalDate.of(2026, 5, 13);
    private static final Map<String, MonetaryAmount> STANDARD_90 = Map.of("standard", usd("90"));

    /** 52.00 + 40 min at 90.00 and 65 min at the shop's own 147.00: 271.25. */
    @Test
    void laborInStandardHours_agreed_theRestIsTheShops() {
        PricedVisit priced = priced(evening(), sheet("mill-sheet", Set.of(), Set.of("mill"), STANDARD_90));

        assertThat(nets(priced)).containsExactly("52.00", "60.00", "159.25");
        assertThat(Amounts.plain(priced.net())).isEqualTo("271.25");
        assertThat(priced.lines().get(1).how().reasons()).contains(
                Phrase.of("reason.rate-sheet", Names.of(Wording.same("mill-sheet"))));
        assertThat(priced.lines().get(2).how().reasons()).extracting(Phrase::key)
                .doesNotContain("reason.rate-sheet");
    }

    /** The site's sheet before the customer's, and his before the account's, entry by entry. */
    @ParameterizedTest
    @CsvSource({"site customer account, 75.00, 49.00, 147.00", "customer account, 80.00, 50.00, 147.00",
            "account, 90.00, 52.00, 147.00", "'', 98.00, 52.00, 147.00"})
    void nearestSheet_entryByEntry(String which, String hour, String serviceCall, String after) {
        List<RateSheet> sheets = Stream.of(
                new RateSheet("account", Wording.same("account"), Set.of(), Set.of("group"),
                        List.of(labor("lead", bands("90", "147", "170"))), List.of(), Map.of("filter", usd("70")),
                        Optional.empty(), Map.of(), Set.of(), Optional.empty(), Place.NOWHERE),
                new RateSheet("site", Wording.same("site"), Set.of("bakery"), Set.of(),
                        List.of(labor("lead", Map.of("standard", usd("75")))), List.of(serviceCall("49")), Map.of(),
                        Optional.empty(), Map.of(), Set.of(), Optional.empty(), Place.NOWHERE),
                new RateSheet("customer", Wording.same("customer"), Set.of(), Set.of("mill"),
                        List.of(labor("lead", Map.of("standard", usd("80")))), List.of(serviceCall("50")), Map.of(),
                        Optional.empty(), Map.of(), Set.of(), Optional.empty(), Place.NOWHERE))
                .filter(sheet -> which.contains(sheet.id())).toList();

        Rates rates = schedule(sheets).asOf(DAY, Optional.of(SITE)).orElseThrow();

        assertThat(nets(Pricer.price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").material("filter", "1")
                .build(), SITE, rates).orElseThrow()))
                .containsExactly(serviceCall, hour, which.isEmpty() ? "87.25" : "70.00");
        assertThat(nets(Pricer.price(visit().lead("2026-05-13T18:00", "2026-05-13T19:00").build(), SITE, rates)
                .orElseThrow())).containsExactly("78.00", after);
    }

    /** The site's 5 % off cleaning do not take away the customer's 10 % off parts: 98.00 less 5 % are 93.10, 125.50 less 10 % 112.95. */
    @Test
    void discountsOfSheets_holdClassByClass() {
        RateSheet customer = new RateSheet("customer", Wording.same("customer"), Set.of(), Set.of("mill"), List.of(),
                List.of(), Map.of(), Optional.empty(),
                Map.of(ChargeClass.PARTS, Percent.of("10"), ChargeClass.CLEANING, Percent.of("20")), Set.of(),
                Optional.empty(),
                Place.NOWHERE);
        RateSheet site = new RateSheet("site", Wording.same("site"), Set.of("bakery"), Set.of(), List.of(), List.of(),
                Map.of(), Optional.empty(), Map.of(ChargeClass.CLEANING, Percent.of("5")), Set.of(), Optional.empty(),
                Place.NOWHERE);

        Rates rates = schedule(List.of(site, customer)).asOf(DAY, Optional.of(SITE)).orElseThrow();

        assertThat(nets(Pricer.price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").material("valve", "1")
                .build(), SITE, rates).orElseThrow())).containsExactly("52.00", "93.10", "112.95");
    }

    @Test
    void otherSitesAndOtherDays_payTheShopsPrices() {
        RateSchedule schedule = new RateSchedule(USD, Timeline.always(rates().labor()),
                Timeline.always(rates().serviceCall()), Timeline.always(rates().materials()),
                Timeline.always(rates().tasks()), Timeline.always(rates().adjustments()),
                Timeline.always(rates().plans()),
                List.of(new DatedSheet(new Period(LocalDate.of(2026, 1, 1), Optional.of(DAY)),
                        sheet("mill-sheet", Set.of(), Set.of("mill"), STANDARD_90))),
                RefrigerantRules.NONE);
        VisitBuilder hour = visit().lead("2026-05-13T10:00", "2026-05-13T11:00");

        assertThat(nets(Pricer.price(hour.build(), SITE,
                schedule.asOf(DAY.minusDays(1), Optional.of(SITE)).orElseThrow()).orElseThrow()))
                .containsExactly("52.00", "90.00");
        assertThat(nets(Pricer.price(hour.build(), SITE, schedule.asOf(DAY, Optional.of(SITE)).orElseThrow())
                .orElseThrow())).containsExactly("52.00", "98.00");
        assertThat(nets(Pricer.price(hour.build(), SITE,
                schedule.asOf(DAY.minusDays(1), Optional.of(RatesFixture.site())).orElseThrow()).orElseThrow()))
                .containsExactly("52.00", "98.00");
    }

    /** 98.00 less the sheet's 5 %, or the agreement's where that is more; never both. */
    @ParameterizedTest
    @CsvSource({"0, 93.10, mill-sheet", "4, 93.10, mill-sheet", "10, 88.20, agreement", "5, 93.10, mill-sheet"})
    void discounts_theBetterHolds(String agreement, String labor, String name) {
        RateSheet sheet = new RateSheet("mill-sheet", Wording.same("mill-sheet"), Set.of(), Set.of("mill"), List.of(),
                List.of(), Map.of(), Optional.empty(), Map.of(ChargeClass.CLEANING, Percent.of("5")), Set.of(),
                Optional.empty(),
                Place.NOWHERE);
        ClassDiscount agreed = new ClassDiscount("a", Wording.same("agreement"),
                Map.of(ChargeClass.CLEANING, Percent.of(agreement), ChargeClass.TRAVEL, Percent.of("50")),
                Optional.empty(), Place.NOWHERE);

        PricedVisit priced = Pricer.price(visit().lead("2026-05-13T10:00", "2026-05-13T11:00").build(), SITE,
                laid(sheet), agreed).orElseThrow();

        assertThat(nets(priced)).containsExactly("26.00", labor);
        assertThat(priced.lines().getLast().how().reasons().getLast().facts().getFirst())
                .isEqualTo(Names.of(Wording.same(name)));
    }

    /** Minimum of 30 minutes, 30 minutes in the service call, and no fee: 52.00 and 15 of 30 min. */
    @Test
    void minimumMinutesAndFees() {
        Rates usual = rates();
        Fee fee = new Fee("truck", Wording.same("truck"), ChargeClass.TRAVEL,
                new Fee.Flat(usd("12"), Optional.empty()), new Applies(true, Set.of(), Place.NOWHERE));
        Adjustments adjustments = new Adjustments(usual.adjustments().modifiers(), List.of(fee),
                usual.adjustments().surcharges(), usual.adjustments().classDiscounts(),
                usual.adjustments().documentDiscounts(), Optional.empty(), Optional.empty(),
                Optional.empty(), List.of());
        Rates withFee = new Rates(USD, usual.labor(), usual.serviceCall(), usual.materials(), usual.tasks(),
                adjustments, usual.plans());
        RateSheet sheet = new RateSheet("s", Wording.same("s"), Set.of("bakery"), Set.of(),
                List.of(new RateSheet.Labor("lead", Map.of(), Map.of(), Map.of("standard", 30), Place.NOWHERE)),
                List.of(),
                Map.of(), Optional.of(15), Map.of(), Set.of("truck"), Optional.empty(), Place.NOWHERE);
        Rates laid = schedule(withFee, List.of(sheet)).asOf(DAY, Optional.of(SITE)).orElseThrow();
        VisitBuilder ten = visit().lead("2026-05-13T10:00", "2026-05-13T10:10");

        assertThat(nets(Pricer.price(ten.build(), SITE, withFee).orElseThrow())).containsExactly("52.00", "98.00",
                "12.00");
        assertThat(nets(Pricer.price(ten.build(), SITE, laid).orElseThrow())).containsExactly("52.00", "24.50");
    }

    /**
     * The shop's first hour costs 130.00. Ninety minutes are 130.00 + 49.00; of him who agreed on 90.00 an hour they are 135.00, and of him
     * who agreed on 110.00 for the first one too 110.00 + 45.00.
     */
    @Test
    void hourAgreed_firstHourIsNotTheShops() {
        Rates usual = rates();
        Grade lead = usual.labor().grades().getFirst();
        LaborRates labor = new LaborRates(usual.labor().bands(), usual.labor().week(),
                List.of(new Grade(lead.id(), lead.name(),
                        new HourPrices(lead.hourly().work(), bands("130", "160", "196"), Map.of(),
                                lead.hourly().wage()),
                        Map.of("standard", 60, "after-hours", 60, "sundays-and-holidays", 60), lead.qualified(),
                        lead.place())),
                usual.labor().counting(), usual.labor().crew());
        Rates dear = new Rates(USD, labor, usual.serviceCall(), usual.materials(), usual.tasks(), usual.adjustments(),
                usual.plans());
        VisitBuilder ninety = visit().lead("2026-05-13T10:00", "2026-05-13T11:30");
        RateSheet first = new RateSheet("first", Wording.same("first"), Set.of(), Set.of("mill"),
                List.of(new RateSheet.Labor("lead", STANDARD_90, Map.of("standard", usd("110")), Map.of(),
                        Place.NOWHERE)),
                List.of(), Map.of(), Optional.empty(), Map.of(), Set.of(), Optional.empty(), Place.NOWHERE);

        assertThat(nets(Pricer.price(ninety.build(), SITE, dear).orElseThrow())).containsExactly("52.00", "130.00",
                "49.00");
        assertThat(nets(Pricer.price(ninety.build(), SITE, laid(dear, sheet("s", Set.of(), Set.of("mill"),
                STANDARD_90))).orElseThrow())).containsExactly("52.00", "135.00");
        PricedVisit agreed = Pricer.price(ninety.build(), SITE, laid(dear, first)).orElseThrow();
        assertThat(nets(agreed)).containsExactly("52.00", "110.00", "45.00");
        assertThat(agreed.lines().get(1).how().reasons())
                .contains(Phrase.of("reason.rate-sheet", Names.of(Wording.same("first"))));
    }

    /** Who agreed on what the shop charges anyway pays what all pay. */
    @Test
    void sheetThatEqualsTheShops_changesNoNet() {
        RateSheet same = new RateSheet("same", Wording.same("same"), Set.of(), Set.of("group"),
                List.of(labor("lead", bands("98", "147", "196")), labor("helper", bands("58", "87", "116"))),
                List.of(new RateSheet.ServiceCall("near", bands("52", "78", "104"), Place.NOWHERE)),
                Map.of("filter", usd("87.25"), "valve", usd("125.50"), "bottled-descaler", usd("24.50")),
                Optional.of(0), Map.of(), Set.of(), Optional.empty(), Place.NOWHERE);
        for (int minutes = 1; minutes < 900; minutes += 37) {
            VisitBuilder builder = visit()
                    .person("helper",
                            new Attendance.Spell(VisitBuilder.at("2026-05-13T09:13"),
                                    VisitBuilder.at("2026-05-13T09:13").plusMinutes(minutes), ChargeClass.REPAIR,
                                    Outcome.CHARGED))
                    .lead("2026-05-13T15:31", "2026-05-13T18:09").material("filter", "2")
                    .material("bottled-descaler", "40").surcharge("handling").documentDiscount("five-percent");

            assertThat(nets(Pricer.price(builder.build(), SITE, laid(same)).orElseThrow()))
                    .isEqualTo(nets(Pricer.price(builder.build(), SITE, rates()).orElseThrow()));
        }
    }

    private static RateSheet sheet(String id, Set<String> sites, Set<String> accounts,
            Map<String, MonetaryAmount> lead) {
        return new RateSheet(id, Wording.same(id), sites, accounts, List.of(labor("lead", lead)), List.of(), Map.of(),
                Optional.empty(), Map.of(), Set.of(), Optional.empty(), Place.NOWHERE);
    }

    private static RateSheet.Labor labor(String grade, Map<String, MonetaryAmount> hourly) {
        return new RateSheet.Labor(grade, hourly, Map.of(), Map.of(), Place.NOWHERE);
    }

    private static RateSheet.ServiceCall serviceCall(String standard) {
        return new RateSheet.ServiceCall("near", Map.of("standard", usd(standard)), Place.NOWHERE);
    }

    private static RateSchedule schedule(List<RateSheet> sheets) {
        return schedule(rates(), sheets);
    }

    private static RateSchedule schedule(Rates rates, List<RateSheet> sheets) {
        return new RateSchedule(USD, Timeline.always(rates.labor()), Timeline.always(rates.serviceCall()),
                Timeline.always(rates.materials()), Timeline.always(rates.tasks()),
                Timeline.always(rates.adjustments()), Timeline.always(rates.plans()),
                sheets.stream()
                        .map(sheet -> new DatedSheet(new Period(LocalDate.of(2026, 1, 1), Optional.empty()), sheet))
                        .toList(),
                RefrigerantRules.NONE);
    }

    private static Rates laid(RateSheet sheet) {
        return laid(rates(), sheet);
    }

    private static Rates laid(Rates rates, RateSheet sheet) {
        return schedule(rates, List.of(sheet)).asOf(DAY, Optional.of(SITE)).orElseThrow();
    }

    private static VisitBuilder evening() {
        return visit().lead("2026-05-13T16:20", "2026-05-13T18:05");
    }

    private static PricedVisit priced(VisitBuilder builder, RateSheet sheet) {
        return Pricer.price(builder.build(), SITE, laid(sheet)).orElseThrow();
    }

    private static List<String> nets(PricedVisit priced) {
        return priced.lines().stream().map(line -> Amounts.plain(line.net())).toList();
    }
}
