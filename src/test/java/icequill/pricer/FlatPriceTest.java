package icequill.pricer;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.RatesFixture.siteWithLargeHead;
import static icequill.RatesFixture.tier;
import static icequill.RatesFixture.usd;
import static icequill.VisitBuilder.NEW_YORK;
import static icequill.VisitBuilder.spell;
import static icequill.VisitBuilder.visit;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.VisitBuilder;
import icequill.agreement.FlatPrices;
import icequill.agreement.Plans;
import icequill.agreement.Reach;
import icequill.agreement.Term;
import icequill.agreement.Tier;
import icequill.agreement.VisitCalendar;
import icequill.explain.HowReader;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Machine;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.rates.Rates;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Flat prices a machine: 345.00 for a batch one up to 1000 lb, 265.00 for a continuous one, each further one 15 % off. */
class FlatPriceTest {

    private static final String SCOPE = "FULL_CLEAN";

    /** 345.00 + 265.00 x 85 % = 345.00 + 225.25 = 570.25, whatever time it takes and whatever is dosed. */
    @Test
    void machines_dearestInFullFurtherOnesLess() {
        PricedVisit priced = priced(cleaned().flat(SCOPE), flat());

        assertThat(nets(priced)).containsExactly("52.00", "345.00", "225.25");
        assertThat(priced.lines()).extracting(PricedLine::machine).containsExactly(Optional.empty(),
                Optional.of("head"), Optional.of("flaker"));
        // 180 min at 46.50 an hour, and 16 fl oz of descaler at 1.37
        assertThat(Amounts.plain(priced.lines().get(1).cost().amount())).isEqualTo("161.42");
        assertThat(priced.lines()).allSatisfy(line -> assertThat(HowReader.evaluate(line.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(line.net())));
    }

    /** Without the word, the time and the dose are charged: 294.00 and 29.59. */
    @Test
    void visitThatSaysNothing_isChargedByTime() {
        assertThat(nets(priced(cleaned(), flat()))).containsExactly("52.00", "294.00", "29.59");
    }

    /** Time on a repair and a valve are charged beside it: 30 min are 49.00. */
    @Test
    void repairAndParts_areChargedBeside() {
        PricedVisit priced = priced(visit()
                .person("lead", spell("2026-05-13T10:00", "2026-05-13T11:30", ChargeClass.CLEANING, Outcome.CHARGED),
                        spell("2026-05-13T11:30", "2026-05-13T12:00", ChargeClass.REPAIR, Outcome.CHARGED))
                .task("head", "descale", Outcome.CHARGED).material("valve", "1").flat(SCOPE), flat());

        assertThat(nets(priced)).containsExactly("52.00", "49.00", "345.00", "125.50");
    }

    /** A machine whose cleaning was declined costs nothing. */
    @Test
    void machineThatWasDeclined_isNotCharged() {
        PricedVisit priced = priced(visit().lead("2026-05-13T10:00", "2026-05-13T13:00")
                .task("head", "descale", Outcome.CHARGED).task("flaker", "brush-condenser", Outcome.DECLINED)
                .flat(SCOPE), flat());

        assertThat(Amounts.plain(priced.net())).isEqualTo("397.00");
    }

    @Test
    void includedInAnAgreement_isTakenOffAtTheFlatPrice() {
        PricedVisit priced = priced(visit().serviceCall(Outcome.INCLUDED)
                .person("lead", spell("2026-05-13T10:00", "2026-05-13T11:30", ChargeClass.CLEANING, Outcome.INCLUDED))
                .task("head", "descale", Outcome.INCLUDED).flat(SCOPE), flat());

        assertThat(nets(priced)).containsExactly("0.00", "0.00");
        assertThat(Amounts.plain(priced.lines().getLast().allowance())).isEqualTo("345.00");
    }

    @Test
    void machineWithoutAPrice_andNoMachineAtAll_areProblems() {
        assertThat(Pricer.price(cleaned().flat(SCOPE).build(), siteWithLargeHead(), flat()).problems())
                .extracting(Problem::text).anyMatch(text -> text.contains(
                        "there is no flat price of \"FULL_CLEAN\" for the machine \"head\", batch, 1900 lb"));
        assertThat(Pricer.price(visit().lead("2026-05-13T10:00", "2026-05-13T11:30").flat(SCOPE).build(), site(),
                flat()).problems()).extracting(Problem::text)
                .anyMatch(text -> text.contains("nothing was done at any machine"));
        assertThat(Pricer.price(cleaned().flat("deep-clean").build(), site(), flat()).problems())
                .extracting(Problem::text).anyMatch(text -> text.contains("there is no scope \"deep-clean\""));
    }

    /** Two visits of 52.00 + 570.25, less 10 %: 1,120.05, to steps of 5: 1,120.00. */
    @Test
    void agreement_isPricedByFlatPrices() {
        Tier tier = tier("semiannual", 2);
        List<StaffedVisit> visits = VisitCalendar
                .of(new Term(LocalDate.of(2026, 6, 1), 12), tier, Set.of(), Optional.empty()).visits().stream()
                .map(planned -> new StaffedVisit(planned, List.of(new StaffedVisit.Person("lead", 180)), List.of(),
                        Optional.empty()))
                .toList();

        PricedAgreement priced = AgreementPricer
                .price(tier, new Reach(2, 1), visits, Optional.empty(), site(), flat(), NEW_YORK)
                .orElseThrow();

        assertThat(Amounts.plain(priced.list())).isEqualTo("1244.50");
        assertThat(Amounts.plain(priced.price())).isEqualTo("1120.00");
    }

    private static VisitBuilder cleaned() {
        return visit().lead("2026-05-13T10:00", "2026-05-13T13:00").task("head", "descale", Outcome.CHARGED)
                .task("flaker", "brush-condenser", Outcome.CHARGED);
    }

    private static Rates flat() {
        Rates usual = rates();
        Plans plans = usual.plans();
        FlatPrices prices = new FlatPrices(List.of(row(Machine.Make.CONTINUOUS, "1000", "265"),
                row(Machine.Make.BATCH, "1000", "345"), row(Machine.Make.BATCH, "400", "285")), Percent.of("15"));
        return new Rates(USD, usual.labor(), usual.serviceCall(), usual.materials(), usual.tasks(),
                usual.adjustments(), new Plans(plans.scopes(), plans.tiers(), plans.catchUps(), plans.filters(), prices,
                        plans.interval()));
    }

    private static FlatPrices.Row row(Machine.Make make, String upTo, String price) {
        return new FlatPrices.Row(SCOPE, make, new BigDecimal(upTo), usd(price), Place.NOWHERE);
    }

    private static PricedVisit priced(VisitBuilder builder, Rates rates) {
        return Pricer.price(builder.build(), site(), rates).orElseThrow();
    }

    private static List<String> nets(PricedVisit priced) {
        return priced.lines().stream().map(line -> Amounts.plain(line.net())).toList();
    }
}
