package icequill;

import static icequill.RatesFixture.AFTER_HOURS;
import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.all;
import static icequill.RatesFixture.bands;
import static icequill.RatesFixture.usd;

import icequill.agreement.FlatPrices;
import icequill.agreement.Plans;
import icequill.money.Percent;
import icequill.party.Machine;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.rates.Adjustments;
import icequill.rates.Applies;
import icequill.rates.Counting;
import icequill.rates.Counting.Overtime;
import icequill.rates.Fee;
import icequill.rates.Grade;
import icequill.rates.HourPrices;
import icequill.rates.LaborRates;
import icequill.rates.Rates;
import icequill.rates.ServiceCallRates;
import icequill.work.ChargeClass;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The fixture's rates with every rule that a shop may leave out, so that their lines can be looked at together. */
public final class AllRules {

    /** The scope whose flat prices there are. */
    public static final String SCOPE = "FULL_CLEAN";

    private static final Applies ALWAYS = new Applies(true, Set.of(), Place.NOWHERE);

    private AllRules() {
    }

    public static Rates rates() {
        Rates usual = RatesFixture.rates();
        return new Rates(USD, labor(usual.labor()), serviceCall(usual.serviceCall()), usual.materials(), usual.tasks(),
                adjustments(usual.adjustments()), plans(usual.plans()));
    }

    private static LaborRates labor(LaborRates usual) {
        return new LaborRates(usual.bands(), usual.week(),
                usual.grades().stream()
                        .map(grade -> new Grade(grade.id(), grade.name(),
                                new HourPrices(grade.hourly().work(), bands("131.5", "170", "210"),
                                        bands("65", "97.5", "130"), grade.hourly().wage()),
                                grade.minimum(), grade.qualified(), grade.place()))
                        .toList(),
                new Counting(all(new BigDecimal("15")), Counting.Per.VISIT,
                        Optional.of(new Overtime(180, AFTER_HOURS))),
                usual.crew());
    }

    private static ServiceCallRates serviceCall(ServiceCallRates usual) {
        return new ServiceCallRates(usual.zones(), usual.beyond(), Optional.of(usd("1.855")), 20, true,
                usual.mileCost(), Optional.of(new BigDecimal("45")), usual.place());
    }

    private static Adjustments adjustments(Adjustments usual) {
        Fee supplies = new Fee("supplies", Wording.same("supplies"), ChargeClass.PARTS,
                new Fee.Part(Percent.of("3"), Set.of(ChargeClass.CLEANING, ChargeClass.PARTS),
                        Optional.of(usd("5")), Optional.of(usd("25"))),
                ALWAYS);
        Fee truck = new Fee("truck", Wording.same("truck"), ChargeClass.TRAVEL,
                new Fee.Flat(usd("7.35"), Optional.empty()), ALWAYS);
        return new Adjustments(usual.modifiers(), List.of(supplies, truck), usual.surcharges(),
                usual.classDiscounts(), usual.documentDiscounts(), Optional.empty(), Optional.empty(),
                Optional.empty(), List.of());
    }

    private static Plans plans(Plans usual) {
        return new Plans(usual.scopes(), usual.tiers(), usual.catchUps(), usual.filters(),
                new FlatPrices(List.of(row(Machine.Make.BATCH, "345.55"), row(Machine.Make.CONTINUOUS, "265.05")),
                        Percent.of("15")),
                usual.interval());
    }

    private static FlatPrices.Row row(Machine.Make make, String price) {
        return new FlatPrices.Row(SCOPE, make, new BigDecimal("2000"), usd(price), Place.NOWHERE);
    }
}
