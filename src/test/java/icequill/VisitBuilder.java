package icequill;

import icequill.money.Percent;
import icequill.money.Reduction;
import icequill.problem.Place;
import icequill.work.Attendance;
import icequill.work.Block;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.LocalTimes;
import icequill.work.OneOff;
import icequill.work.Outcome;
import icequill.work.OwnPrice;
import icequill.work.PurchaseOrder;
import icequill.work.Quantity;
import icequill.work.Route;
import icequill.work.TakenBack;
import icequill.work.Unit;
import icequill.work.Visit;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts visits together for tests, in New York time. Elements stand at a line of their own, so that problems can be told apart. */
public final class VisitBuilder {

    public static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    private final List<Attendance> people = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<VisitLine> lines = new ArrayList<>();
    private final List<Visit.Named> surcharges = new ArrayList<>();
    private final List<OneOff.OnClass> less = new ArrayList<>();
    private final List<Visit.Named> fees = new ArrayList<>();
    private Optional<Visit.Named> flat = Optional.empty();
    private Optional<Visit.Named> classDiscount = Optional.empty();
    private Optional<Visit.Named> documentDiscount = Optional.empty();
    private Optional<Route> route = Optional.empty();
    private Outcome serviceCall = Outcome.CHARGED;
    private int line = 1;

    public static VisitBuilder visit() {
        return new VisitBuilder();
    }

    public static ZonedDateTime at(String local) {
        return LocalTimes.resolve(LocalDateTime.parse(local), Optional.empty(), NEW_YORK, Place.NOWHERE).orElseThrow();
    }

    public VisitBuilder lead(String arrived, String left) {
        return person("lead", spell(arrived, left, ChargeClass.CLEANING, Outcome.CHARGED));
    }

    public VisitBuilder person(String grade, Attendance.Spell... spells) {
        return stay("Technician " + people.size(), grade, spells);
    }

    /** A stay of somebody who may have others. */
    public VisitBuilder stay(String name, String grade, Attendance.Spell... spells) {
        people.add(new Attendance(name, grade, List.of(spells), place()));
        return this;
    }

    public static Attendance.Spell spell(String from, String until, ChargeClass on, Outcome outcome) {
        return new Attendance.Spell(at(from), at(until), on, outcome);
    }

    public VisitBuilder material(String id, String quantity) {
        return material(id, quantity, Outcome.CHARGED, Optional.empty());
    }

    public VisitBuilder material(String id, String quantity, Outcome outcome, Optional<String> machine) {
        lines.add(new VisitLine.MaterialUsed(id, new BigDecimal(quantity), machine, outcome, place()));
        return this;
    }

    public VisitBuilder modifier(String id, String quantity) {
        return modifier(id, quantity, Outcome.CHARGED, Optional.empty());
    }

    public VisitBuilder modifier(String id, String quantity, Outcome outcome, String machine) {
        return modifier(id, quantity, outcome, Optional.of(machine));
    }

    private VisitBuilder modifier(String id, String quantity, Outcome outcome, Optional<String> machine) {
        lines.add(new VisitLine.ModifierApplied(id, new BigDecimal(quantity), machine, outcome, place()));
        return this;
    }

    /** A line in one's own words, for the site as a whole. */
    public VisitBuilder own(ChargeClass on, String quantity, OwnPrice price, Optional<TakenBack> back) {
        lines.add(new VisitLine.Own("as I say", on, new Quantity(new BigDecimal(quantity), Unit.EACH), price, back,
                Optional.empty(), Optional.empty(), Outcome.CHARGED, Optional.empty(), place()));
        return this;
    }

    /** A block that is sold ahead for 412.34. */
    public VisitBuilder sells(Block block) {
        lines.add(new VisitLine.Own("ahead", block.on().getFirst(), Quantity.of(1, Unit.EACH),
                new OwnPrice.Given(RatesFixture.usd("412.34"), Optional.empty()), Optional.empty(),
                Optional.of(block), Optional.empty(), Outcome.CHARGED, Optional.empty(), place()));
        return this;
    }

    /** What is taken off the last line for this once. */
    public VisitBuilder less(Reduction off) {
        Optional<OneOff> less = Optional.of(new OneOff(off, "bought three", place()));
        lines.add(switch (lines.removeLast()) {
        case VisitLine.MaterialUsed used -> new VisitLine.MaterialUsed(used.material(), used.quantity(),
                used.machine(), used.outcome(), less, used.place());
        case VisitLine.ModifierApplied applied -> new VisitLine.ModifierApplied(applied.modifier(),
                applied.quantity(), applied.machine(), applied.outcome(), less, applied.place());
        case VisitLine.Own own -> new VisitLine.Own(own.text(), own.chargeClass(), own.quantity(), own.price(),
                own.back(), own.block(), own.machine(), own.outcome(), less, own.place());
        });
        return this;
    }

    /** What is taken off a class for this once. */
    public VisitBuilder less(ChargeClass on, String percent) {
        less.add(new OneOff.OnClass(on, Percent.of(percent), "we came late", place()));
        return this;
    }

    public VisitBuilder task(String machine, String task, Outcome outcome) {
        findings.add(new Finding(machine, Optional.empty(), Optional.empty(), Optional.empty(),
                List.of(new Finding.TaskDone(task, outcome, place())), List.of(), List.of(), place()));
        return this;
    }

    public VisitBuilder surcharge(String id) {
        surcharges.add(new Visit.Named(id, place()));
        return this;
    }

    public VisitBuilder fee(String id) {
        fees.add(new Visit.Named(id, place()));
        return this;
    }

    public VisitBuilder flat(String scope) {
        flat = Optional.of(new Visit.Named(scope, place()));
        return this;
    }

    public VisitBuilder classDiscount(String id) {
        classDiscount = Optional.of(new Visit.Named(id, place()));
        return this;
    }

    public VisitBuilder documentDiscount(String id) {
        documentDiscount = Optional.of(new Visit.Named(id, place()));
        return this;
    }

    public VisitBuilder route(String name) {
        route = Optional.of(new Route(name, Optional.empty(), place()));
        return this;
    }

    public VisitBuilder serviceCall(Outcome outcome) {
        serviceCall = outcome;
        return this;
    }

    public Visit build() {
        return new Visit("test", "bakery", Optional.empty(), PurchaseOrder.NONE, serviceCall, people, Optional.empty(),
                Optional.empty(),
                findings, lines,
                new Visit.PriceTerms(flat, fees, surcharges, classDiscount, documentDiscount, less, route,
                        Optional.empty(), List.of()),
                Optional.empty(),
                Visit.Handover.NONE, place());
    }

    private Place place() {
        return new Place("visits/test.yaml", line++, "");
    }
}
