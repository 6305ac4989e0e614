package icequill.pricer;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.RatesFixture.tier;
import static icequill.RatesFixture.usd;
import static icequill.VisitBuilder.NEW_YORK;
import static icequill.VisitBuilder.spell;
import static icequill.VisitBuilder.visit;
import static icequill.agreement.Scope.Kind.FULL_CLEAN;
import static icequill.agreement.Scope.Kind.LIGHT_VISIT;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.VisitBuilder;
import icequill.agreement.IncludedCalls;
import icequill.agreement.QuantityDiscounts;
import icequill.agreement.Reach;
import icequill.agreement.Term;
import icequill.agreement.Tier;
import icequill.agreement.VisitCalendar;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.AccessHours;
import icequill.party.Site;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.rates.Agreed;
import icequill.rates.ClassDiscount;
import icequill.rates.IncludedTax;
import icequill.rates.Rates;
import icequill.rates.RefrigerantRules;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.VisitLine.ModifierApplied;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prices of a year, worked by hand from service call 52, 78, 104 by band and labor 98, 147, 196. */
class AgreementPricerTest {

    private static final Reach ONE_HEAD = new Reach(1, 1);
    private static final IncludedCalls ONE_CALL = new IncludedCalls(1, Percent.of("15"));
    private static final CallReserve EXPECTED = new CallReserve(new BigDecimal("0.351472"), usd("286.803"),
            usd("120.50"));

    /**
     * By hand: 10 % off 631.00 leaves 567.90; 1.15 x 0.351472 x 286.803 = 115.9228... is 115.92; 683.82 to the step 685.
     */
    @Test
    void year_discountAndOneIncludedCall_toThePriceStep() {
        PricedAgreement year = new YearPricing(tier("any", List.of(FULL_CLEAN, FULL_CLEAN), ONE_CALL), ONE_HEAD,
                List.of(), USD)
                .price(List.of(), List.of(usd("315.50"), usd("315.50")), Optional.of(EXPECTED));

        assertThat(Amounts.plain(year.list())).isEqualTo("631.00");
        assertThat(Amounts.plain(year.list().subtract(year.discount()))).isEqualTo("567.90");
        assertThat(Amounts.plain(year.reserve())).isEqualTo("115.92");
        assertThat(Amounts.plain(year.price())).isEqualTo("685.00");
        assertThat(year.how().text(USD))
                .isEqualTo("step(315.50 USD + 315.50 USD - round(10 % x 631.00 USD; allowance; 2)"
                        + " + 115.92 USD; nearest; 5.00) = 685.00");
        assertThat(year.how().reasons()).extracting(Phrase::key).containsExactly("reason.tier-discount",
                "reason.included-calls", "reason.price-step");
        assertThat(year.reserveHow().text(USD))
                .isEqualTo("round((100 % + 15 %) x 0.351472 x 286.803 USD; reserve; 2) = 115.92");
        assertThat(year.reserveHow().reasons()).extracting(Phrase::key).containsExactly("owner.reserve");
        assertThat(HowReader.evaluate(year.reserveHow().text(USD))).isEqualByComparingTo("115.92");
        assertThat(HowReader.evaluate(year.how().text(USD))).isEqualByComparingTo("685");
    }

    /**
     * By hand, two full cleans on weekdays: service call 52.00, 90 minutes 147.00, descaler for the 500 lb head 16 x 1.8495 =
     * 29.59, two filters of 87.25. That is 403.09 a visit, 806.18 a year, less 80.62; 725.56 to the step 725.
     */
    @Test
    void price_semiannual_callLaborDosesAndFiltersOfEveryMachine() {
        PricedAgreement year = price(tier("semiannual", 2), site(), 90).orElseThrow();

        assertThat(nets(year.slots().getFirst())).containsExactly("52.00", "147.00", "29.59", "87.25", "87.25");
        assertThat(Amounts.plain(year.list())).isEqualTo("806.18");
        assertThat(Amounts.plain(year.discount())).isEqualTo("80.62");
        assertThat(year.reserve().isZero()).isTrue();
        assertThat(Amounts.plain(year.price())).isEqualTo("725.00");
        assertThat(year.how().reasons()).extracting(Phrase::key).containsExactly("reason.tier-discount",
                "reason.price-step");
    }

    /** By hand: 403.09 with 8.875 % of tax is 370.2319 without, so 740.46 a year, less 74.05; 666.41 to the step 665. */
    @Test
    void price_ofPricesShownWithTax_isBeforeTax() {
        Rates shown = rates().including(new IncludedTax(Arrays.stream(ChargeClass.values()).collect(Collectors
                .toMap(Function.identity(), on -> new IncludedTax.Part("sales", Percent.of("8.875")))), Set.of(),
                false));

        PricedAgreement year = two(tier("semiannual", 2), ONE_HEAD, shown);

        assertThat(Amounts.plain(year.list())).isEqualTo("740.46");
        assertThat(Amounts.plain(year.discount())).isEqualTo("74.05");
        assertThat(Amounts.plain(year.price())).isEqualTo("665.00");
    }

    /**
     * By hand, off 806.18: the tier's 10 % are 80.62; 12 % for two machines are 96.74, which leaves 709.44; a sheet's 50 % off
     * cleaning are 147.00 of 294.00, which leaves 659.18. Only the best is taken off, and it is said which.
     */
    @Test
    void price_severalDiscounts_theBestOfThemAndNeverTwo() {
        Tier base = tier("semiannual", 2);
        Tier byNumber = with(base, new QuantityDiscounts.Row(QuantityDiscounts.Counted.MACHINES, 2, Percent.of("12")),
                new QuantityDiscounts.Row(QuantityDiscounts.Counted.SITES, 3, Percent.of("30")));

        PricedAgreement one = two(byNumber, new Reach(1, 1), rates());
        PricedAgreement two = two(byNumber, new Reach(2, 1), rates());
        PricedAgreement small = two(byNumber, new Reach(2, 1), sheet("20"));
        PricedAgreement large = two(byNumber, new Reach(2, 1), sheet("50"));
        PricedAgreement sites = two(byNumber, new Reach(2, 3), sheet("50"));

        assertThat(Stream.of(one, two, small, large, sites).map(PricedAgreement::discount).map(Amounts::plain))
                .containsExactly("80.62", "96.74", "96.74", "147.00", "241.85");
        assertThat(Stream.of(one, two, small, large, sites).map(PricedAgreement::price).map(Amounts::plain))
                .containsExactly("725.00", "710.00", "710.00", "660.00", "565.00");
        assertThat(Stream.of(one, two, small, large, sites).map(year -> year.discountLabel().key())).containsExactly(
                "plan.discount", "plan.discount-machines", "plan.discount-machines", "plan.discount-sheet",
                "plan.discount-sites");
        assertThat(one.how().reasons()).extracting(Phrase::key).containsExactly("reason.tier-discount",
                "reason.price-step");
        assertThat(large.how().reasons()).extracting(Phrase::key).containsExactly("reason.discount-sheet",
                "reason.best-discount", "reason.price-step");
        assertThat(Stream.of(one, two, small, large, sites)).allSatisfy(year -> assertThat(HowReader
                .evaluate(year.how().text(USD))).isEqualByComparingTo(Amounts.number(year.price())));
    }

    private static PricedAgreement two(Tier tier, Reach reach, Rates rates) {
        return AgreementPricer.price(tier, reach, plans(tier, LocalDate.of(2026, 5, 13), 90, List.of()),
                Optional.empty(), site(), rates, NEW_YORK).orElseThrow();
    }

    private static Rates sheet(String percent) {
        Rates usual = rates();
        return new Rates(USD, usual.labor(), usual.serviceCall(), usual.materials(), usual.tasks(),
                usual.adjustments(), usual.plans(),
                new Agreed(Map.of(), List.of(new ClassDiscount("chain", Wording.same("the chain"),
                        Map.of(ChargeClass.CLEANING, Percent.of(percent)), Optional.empty(), Place.NOWHERE))),
                Optional.empty(), RefrigerantRules.NONE);
    }

    private static Tier with(Tier base, QuantityDiscounts.Row... rows) {
        return new Tier(base.id(), base.name(), base.slots(), base.exclusions(), base.response(), base.included(),
                base.discount(), Optional.of(new QuantityDiscounts(List.of(rows))), base.callDiscounts(), base.step(),
                base.cap(),
                base.place());
    }

    /** By hand: filters every six months only; 228.59 without and 403.09 with them. The light visit has no descaler. */
    @Test
    void price_quarterlyWithALightVisit_filtersWhenDueAndDosesOfTheScope() {
        Tier mixed = tier("mixed", List.of(FULL_CLEAN, LIGHT_VISIT, FULL_CLEAN, FULL_CLEAN), IncludedCalls.NONE);

        PricedAgreement year = price(mixed, site(), 90).orElseThrow();

        assertThat(year.slots()).map(slot -> Amounts.plain(slot.priced().net())).containsExactly("403.09", "199.00",
                "403.09", "228.59");
    }

    /**
     * By hand: 90 minutes, standard hours from 07:00 to 17:00. Where they fit, 52.00 and 147.00, as early as may be. Open until
     * 08:00 the end is cheapest: 30 minutes at 147 and 60 at 98, from 06:30, for 78.00 on arrival. From 16:30 on they are 30
     * minutes at 98 and 60 at 147: 52.00, 49.00 and 147.00. Through the night nothing is cheap.
     */
    @ParameterizedTest
    @CsvSource({"05:00, 18:00, 07:00, 52.00 147.00", "09:00, 18:00, 09:00, 52.00 147.00",
            "05:00, 08:00, 06:30, 78.00 73.50 98.00", "16:30, 18:00, 16:30, 52.00 49.00 147.00",
            "22:00, 04:00, 22:00, 78.00 220.50", "22:00, 09:00, 07:00, 52.00 147.00"})
    void price_accessHours_atTheHourThatCostsLeast(LocalTime from, LocalTime until, LocalTime begins, String expected) {
        Site open = access(site(), from, until);

        PricedAgreement year = price(tier("light", List.of(LIGHT_VISIT), IncludedCalls.NONE), open, 90).orElseThrow();

        assertThat(year.slots().getFirst().arrival()).isEqualTo(begins);

        assertThat(nets(year.slots().getFirst())).containsExactlyElementsOf(
                List.of((expected + " 87.25 87.25").split(" ")));
    }

    /** 90 minutes of work; open for 89 or for 90, the last ones before midnight. */
    @ParameterizedTest
    @CsvSource({"16:31, 18:00, true", "16:30, 18:00, false", "22:31, 00:00, true", "22:30, 00:00, false"})
    void price_workLongerThanAccess_remarked(LocalTime from, LocalTime until, boolean remarked) {
        PricedAgreement year = price(tier("light", List.of(LIGHT_VISIT), IncludedCalls.NONE),
                access(site(), from, until), 90).orElseThrow();

        assertThat(year.slots().getFirst().remarks().stream().map(Phrase::key).toList())
                .isEqualTo(remarked ? List.of("remark.access-too-short") : List.of());
    }

    /** From 07:00 to 17:00 are 600 minutes. */
    @ParameterizedTest
    @CsvSource({"601, true", "600, false"})
    void price_workLongerThanAWorkingDay_remarked(int minutes, boolean remarked) {
        PricedAgreement year = price(tier("light", List.of(LIGHT_VISIT), IncludedCalls.NONE), site(), minutes)
                .orElseThrow();

        assertThat(year.slots().getFirst().remarks().stream().map(Phrase::key).toList())
                .isEqualTo(remarked ? List.of("remark.longer-than-day") : List.of());
    }

    /** By hand: the tier takes 10 % off repair labor, 98.00, and nothing off the service call; the visit's own discount wins. */
    @Test
    void price_callUnderAnAgreement_tiersDiscountsByClass() {
        Tier tier = tier("quarterly", 4);
        VisitBuilder call = visit().person("lead",
                spell("2026-05-13T10:00", "2026-05-13T11:00", ChargeClass.REPAIR, Outcome.CHARGED));

        assertThat(nets(Pricer.price(call.build(), site(), rates(), tier).orElseThrow())).containsExactly("52.00",
                "88.20");
        assertThat(nets(Pricer.price(call.classDiscount("labor-only").build(), site(), rates(), tier).orElseThrow()))
                .containsExactly("52.00", "98.00");
    }

    /** A planned day that is a Sunday, a Saturday or a holiday is priced like the next working day. */
    @ParameterizedTest
    @CsvSource({"2026-05-10", "2026-05-09", "2026-01-01", "2026-11-26"})
    void price_dayOff_pricedAtTheNextWorkingDay(LocalDate start) {
        Tier light = tier("light", List.of(LIGHT_VISIT), IncludedCalls.NONE);

        PricedAgreement year = AgreementPricer
                .price(light, ONE_HEAD, plans(light, start, 60, List.of()), Optional.empty(),
                        site(), rates(), NEW_YORK)
                .orElseThrow();

        assertThat(nets(year.slots().getFirst())).startsWith("52.00", "98.00");
    }

    @Test
    void price_modifiers_onEveryVisitTheyAreNamedFor() {
        Tier light = tier("light", List.of(LIGHT_VISIT), IncludedCalls.NONE);
        ModifierApplied stairs = new ModifierApplied("stairs", BigDecimal.ONE, Optional.of("head"), Outcome.CHARGED,
                Place.NOWHERE);

        PricedAgreement year = AgreementPricer.price(light, ONE_HEAD,
                plans(light, LocalDate.of(2026, 5, 13), 60, List.of(stairs)), Optional.empty(), site(), rates(),
                NEW_YORK).orElseThrow();

        assertThat(nets(year.slots().getFirst())).endsWith("25.00");
    }

    @Test
    void price_callsIncludedButNoneExpected_problemBesideAllOthers() {
        Tier calls = tier("calls", List.of(FULL_CLEAN), ONE_CALL);
        List<StaffedVisit> unknown = plans(calls, LocalDate.of(2026, 5, 13), 60, List.of()).stream()
                .map(plan -> new StaffedVisit(plan.visit(), List.of(new StaffedVisit.Person("leed", 60)), List.of(),
                        Optional.empty()))
                .toList();

        List<Problem> problems = AgreementPricer.price(calls, ONE_HEAD, unknown, Optional.empty(),
                RatesFixture.siteWithLargeHead(), rates(), NEW_YORK).problems();

        assertThat(problems).extracting(problem -> problem.code() + " " + problem.place().reference()).containsExactly(
                "MISSING pricing/tiers.yaml:30", "UNKNOWN_NAME pricing/tiers.yaml:30",
                "OUT_OF_RANGE pricing/tiers.yaml:30");
    }

    @Test
    void price_callsIncluded_reserveAndWithoutThemNone() {
        Tier calls = tier("calls", List.of(FULL_CLEAN), ONE_CALL);
        Tier none = tier("none", List.of(FULL_CLEAN), IncludedCalls.NONE);

        assertThat(Amounts.plain(price(calls, site(), 90, Optional.of(EXPECTED)).orElseThrow().reserve()))
                .isEqualTo("115.92");
        assertThat(price(none, site(), 90, Optional.of(EXPECTED)).orElseThrow().calls()).isEmpty();
    }

    /**
     * By hand: a visit costs 11.60 for 16 miles, 69.75 for 90 minutes, 21.92 of descaler and two filters at 41.00: 185.27. The
     * year's 725.00 falls on two like visits as 362.50 each.
     */
    @Test
    void margin_semiannual_costAndMarginOfEachSlot() {
        AgreementMargin margin = AgreementMargin.of(price(tier("semiannual", 2), site(), 90).orElseThrow());

        assertThat(margin.slots()).map(slot -> Amounts.plain(slot.price()) + " " + Amounts.plain(slot.cost()) + " "
                + Amounts.plain(slot.margin())).containsExactly("362.50 185.27 177.23", "362.50 185.27 177.23");
        assertThat(Amounts.plain(margin.cost())).isEqualTo("370.54");
        assertThat(Amounts.plain(margin.margin())).isEqualTo("354.46");
        assertThat(margin.calls().amount().isZero()).isTrue();
    }

    /** By hand: 0.351472 x 120.50 = 42.352..., so 42.35. */
    @Test
    void margin_includedCalls_theirCostToo() {
        AgreementMargin margin = AgreementMargin.of(price(tier("calls", List.of(FULL_CLEAN), ONE_CALL), site(), 90,
                Optional.of(EXPECTED)).orElseThrow());

        assertThat(Amounts.plain(margin.calls().amount())).isEqualTo("42.35");
        assertThat(margin.cost().isEqualTo(usd("185.27").add(usd("42.35")))).isTrue();
        assertThat(HowReader.evaluate(margin.calls().how().text(USD))).isEqualByComparingTo("42.35");
    }

    @Property(tries = 300, seed = "685")
    void year_anyVisits_explainsItselfToAFullStepNearBy(
            @ForAll @Size(min = 1, max = 12) List<@LongRange(min = 0, max = 500_000) Long> cents,
            @ForAll @IntRange(min = 0, max = 100) int discount, @ForAll @IntRange(min = 1, max = 5000) int step) {
        Tier base = tier("any", 1);
        MonetaryAmount full = usd(BigDecimal.valueOf(step, 2).toPlainString());
        Tier any = new Tier("any", base.name(), base.slots(), List.of(), base.response(), ONE_CALL,
                Percent.of(String.valueOf(discount)), base.quantity(), base.callDiscounts(), full, base.cap(),
                base.place());

        PricedAgreement year = new YearPricing(any, ONE_HEAD, List.of(), USD).price(List.of(),
                cents.stream().map(number -> usd(BigDecimal.valueOf(number, 2).toPlainString())).toList(),
                Optional.of(EXPECTED));

        BigDecimal price = Amounts.number(year.price());
        BigDecimal exact = Amounts.number(year.list().subtract(year.discount()).add(year.reserve()));
        assertThat(HowReader.evaluate(year.how().text(USD))).isEqualByComparingTo(price);
        assertThat(price.remainder(BigDecimal.valueOf(step, 2))).isEqualByComparingTo("0");
        assertThat(price.subtract(exact).abs().multiply(BigDecimal.TWO))
                .isLessThanOrEqualTo(BigDecimal.valueOf(step, 2));
    }

    private static Validated<PricedAgreement> price(Tier tier, Site site, int minutes) {
        return price(tier, site, minutes, Optional.empty());
    }

    private static Validated<PricedAgreement> price(Tier tier, Site site, int minutes, Optional<CallReserve> calls) {
        return AgreementPricer.price(tier, ONE_HEAD, plans(tier, LocalDate.of(2026, 5, 13), minutes, List.of()), calls,
                site,
                rates(), NEW_YORK);
    }

    private static List<StaffedVisit> plans(Tier tier, LocalDate start, int minutes, List<ModifierApplied> modifiers) {
        return VisitCalendar.of(new Term(start, 12), tier, Set.of(), rates().plans().filters()).firstYear().stream()
                .map(visit -> new StaffedVisit(visit, List.of(new StaffedVisit.Person("lead", minutes)), modifiers,
                        Optional.empty()))
                .toList();
    }

    private static Site access(Site site, LocalTime from, LocalTime until) {
        return new Site(site.id(), site.customer(), site.accounts(), site.name(), site.storeNumber(), site.address(),
                site.kind(),
                site.conditions(),
                site.miles(), site.taxPlace(), Optional.of(new AccessHours(from, until)), site.season(), site.closed(),
                site.parking(), site.roof(), site.machines(), site.layout(), List.of(), site.contacts(),
                site.notes());
    }

    private static List<String> nets(PricedSlot slot) {
        return nets(slot.priced());
    }

    private static List<String> nets(PricedVisit priced) {
        return priced.lines().stream().map(line -> Amounts.plain(line.net())).toList();
    }
}
