package icequill;

import icequill.agreement.CatchUp;
import icequill.agreement.FilterRule;
import icequill.agreement.FlatPrices;
import icequill.agreement.IncludedCalls;
import icequill.agreement.IntervalRules;
import icequill.agreement.Plans;
import icequill.agreement.Scope;
import icequill.agreement.Slot;
import icequill.agreement.Tier;
import icequill.files.pricing.SiteKindsReader;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Reduction;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Conditions;
import icequill.party.Contacts;
import icequill.party.Customer;
import icequill.party.Layout;
import icequill.party.Machine;
import icequill.party.MailWishes;
import icequill.party.Site;
import icequill.party.SiteKind;
import icequill.party.Timeline;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.rates.Adjustments;
import icequill.rates.Applies;
import icequill.rates.ClassDiscount;
import icequill.rates.Counting;
import icequill.rates.CrewRules;
import icequill.rates.DocumentDiscount;
import icequill.rates.Grade;
import icequill.rates.HourPrices;
import icequill.rates.Label;
import icequill.rates.LaborRates;
import icequill.rates.Material;
import icequill.rates.Modifier;
import icequill.rates.Rates;
import icequill.rates.ServiceCallRates;
import icequill.rates.Surcharge;
import icequill.work.Band;
import icequill.work.BandWeek;
import icequill.work.Caution;
import icequill.work.ChargeClass;
import icequill.work.Chemistry;
import icequill.work.DustLevel;
import icequill.work.Holiday;
import icequill.work.MachineState;
import icequill.work.Part;
import icequill.work.Procedure;
import icequill.work.Qualification;
import icequill.work.Task;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.MonthDay;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.Monetary;
import javax.money.MonetaryAmount;

/** The prices and the site that worked examples are figured with; one place, so that the examples stay comparable. */
public final class RatesFixture {

    public static final CurrencyUnit USD = Monetary.getCurrency("USD");
    public static final Band STANDARD = new Band("standard", Wording.same("standard hours"));
    public static final Band AFTER_HOURS = new Band("after-hours", Wording.same("after hours"));
    public static final Band SUNDAYS = new Band("sundays-and-holidays", Wording.same("Sundays and holidays"));
    public static final Holiday NEW_YEAR = new Holiday(Wording.same("New Year's Day"),
            new Holiday.Yearly(MonthDay.of(1, 1), Holiday.Observed.NEVER));
    public static final Holiday THANKSGIVING = new Holiday(Wording.same("Thanksgiving Day"),
            new Holiday.NthWeekday(4, DayOfWeek.THURSDAY, Month.NOVEMBER));
    public static final BandWeek WEEK = new BandWeek(List.of(
            new BandWeek.Window(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), LocalTime.of(7, 0),
                    LocalTime.of(17, 0),
                    STANDARD),
            new BandWeek.Window(Set.of(DayOfWeek.SUNDAY), LocalTime.MIDNIGHT, LocalTime.MIDNIGHT, SUNDAYS)), SUNDAYS,
            AFTER_HOURS, List.of(NEW_YEAR, THANKSGIVING));

    private static final Place MATERIALS = new Place("pricing/materials.yaml", 12, "items");

    private RatesFixture() {
    }

    public static MonetaryAmount usd(String number) {
        return Amounts.of(new BigDecimal(number), USD);
    }

    public static Rates rates() {
        return new Rates(USD, labor(), serviceCall(), materials(), tasks(), adjustments(), plans());
    }

    public static LaborRates labor() {
        Grade lead = new Grade("lead", new Wording("lead technician", "técnico principal"),
                hours(bands("98", "147", "196"), "46.50"), minimum(60), EnumSet.allOf(Qualification.class),
                new Place("pricing/labor.yaml", 40, "grades[0]"));
        Grade helper = new Grade("helper", new Wording("helper", "ayudante"), hours(bands("58", "87", "116"), "29"),
                minimum(0), Set.of(),
                new Place("pricing/labor.yaml", 46, "grades[1]"));
        return new LaborRates(List.of(STANDARD, AFTER_HOURS, SUNDAYS), WEEK, List.of(lead, helper),
                new Counting(all(new BigDecimal("15")), Counting.Per.PERSON, Optional.empty()), CrewRules.NONE);
    }

    private static HourPrices hours(Map<String, MonetaryAmount> work, String wage) {
        return new HourPrices(work, Map.of(), Map.of(), all(usd(wage)));
    }

    private static Map<String, Integer> minimum(int minutes) {
        return all(minutes);
    }

    /** The same in every band. */
    public static <T> Map<String, T> all(T value) {
        return Map.of("standard", value, "after-hours", value, "sundays-and-holidays", value);
    }

    private static ServiceCallRates serviceCall() {
        ServiceCallRates.Zone zone = new ServiceCallRates.Zone("near", new Wording("up to 30 miles", "hasta 30 millas"),
                new BigDecimal("30"), bands("52", "78", "104"), new Place("pricing/service-call.yaml", 9, "zones[0]"));
        return new ServiceCallRates(List.of(zone), usd("2.40"), Optional.empty(), 0, false, usd("0.725"),
                Optional.empty(),
                new Place("pricing/service-call.yaml", 20, "mileCost"));
    }

    public static Map<String, MonetaryAmount> bands(String standard, String afterHours, String sundays) {
        return Map.of("standard", usd(standard), "after-hours", usd(afterHours), "sundays-and-holidays", usd(sundays));
    }

    private static List<Material> materials() {
        return List.of(
                chemical("descaler", Optional.empty(), new Material.MarkedUp(usd("1.37"), Percent.of("35")),
                        Chemistry.ACID, "6"),
                chemical("sanitizer", Optional.empty(), new Material.Given(usd("0.62"), usd("0.21")), Chemistry.OTHER,
                        "1.5"),
                each("filter", ChargeClass.FILTERS, new Material.Given(usd("87.25"), usd("41"))),
                each("valve", ChargeClass.PARTS, new Material.Given(usd("125.50"), usd("63"))),
                chemical("bottled-descaler", Optional.of(new BigDecimal("32")),
                        new Material.Given(usd("24.50"), usd("12")), Chemistry.ACID, "6"));
    }

    private static Material chemical(String id, Optional<BigDecimal> pack, Material.Price price, Chemistry chemistry,
            String mostInOneGallon) {
        Label label = new Label(chemistry, new BigDecimal(mostInOneGallon), Unit.GALLON,
                new Label.Minutes(5, Optional.of(40)), Optional.empty());
        return new Material(id, Wording.same(id), Optional.empty(), ChargeClass.CHEMICALS, Unit.FLUID_OUNCE, pack,
                price,
                Optional.empty(), Optional.of(label), MATERIALS);
    }

    private static Material each(String id, ChargeClass chargeClass, Material.Price price) {
        return new Material(id, Wording.same(id), Optional.empty(), chargeClass, Unit.EACH, Optional.empty(), price,
                Optional.empty(),
                Optional.empty(), MATERIALS);
    }

    private static List<Task> tasks() {
        Task.Dose dose = new Task.Dose("descaler", List.of(step("300", "8", "2"), step("800", "16", "3")),
                Place.NOWHERE);
        Task descale = new Task("descale", Wording.same("circulate descaler"),
                Optional.of(Wording.same("descaler circulated")), Set.of(Machine.Make.BATCH),
                EnumSet.allOf(Machine.Cooling.class), ChargeClass.CLEANING, MachineState.CIRCULATING, 40, 3, 20, 1,
                Part.OTHER,
                DustLevel.NEITHER,
                List.of(dose), List.of(Caution.GLOVES_AND_EYES), Set.of(),
                new Procedure(Optional.of(new Procedure.Timer(20, 25)), 3, List.of()), Place.NOWHERE);
        Task brush = new Task("brush-condenser", Wording.same("brush condenser"), Optional.empty(),
                EnumSet.allOf(Machine.Make.class),
                Set.of(Machine.Cooling.AIR), ChargeClass.CLEANING, MachineState.DE_ENERGIZED, 20, 10, 0, 1,
                Part.CONDENSER, DustLevel.RAISES,
                List.of(),
                List.of(Caution.NYLON_BRUSH_ONLY), Set.of(), Procedure.NONE, Place.NOWHERE);
        return List.of(descale, brush);
    }

    private static Task.Step step(String upTo, String quantity, String gallons) {
        return new Task.Step(new BigDecimal(upTo), new BigDecimal(quantity), Optional.of(new BigDecimal(gallons)));
    }

    private static Adjustments adjustments() {
        Place place = new Place("pricing/adjustments.yaml", 5, "");
        return new Adjustments(List.of(
                new Modifier("stairs", Wording.same("stairs"), ChargeClass.CLEANING, usd("25"), Unit.EACH, false,
                        place),
                new Modifier("waiting", Wording.same("waiting"), ChargeClass.TRAVEL, usd("98"), Unit.MINUTE, false,
                        place),
                new Modifier("found-nobody", Wording.same("nobody there"), ChargeClass.TRAVEL, usd("35"), Unit.EACH,
                        true,
                        place)),
                List.of(), List.of(new Surcharge("handling", Wording.same("handling"), Percent.of("3"),
                        EnumSet.allOf(ChargeClass.class), ChargeClass.DISPOSAL, usual(place), place)),
                List.of(new ClassDiscount("ten-off", Wording.same("ten off"), allClasses(Percent.of("10")),
                        Optional.empty(), place),
                        new ClassDiscount("labor-only", Wording.same("labor only"),
                                Map.of(ChargeClass.CLEANING, Percent.of("10")), Optional.empty(), place)),
                List.of(new DocumentDiscount("ten-dollars", Wording.same("ten dollars"),
                        new Reduction.Fixed(usd("10")), place),
                        new DocumentDiscount("five-percent", Wording.same("five percent"),
                                new Reduction.Part(Percent.of("5")), place)),
                Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    /** Where a visit names it, and everywhere. */
    private static Applies usual(Place place) {
        return new Applies(false, Set.of(), place);
    }

    private static Plans plans() {
        List<Tier> tiers = List.of(tier("semiannual", 2), tier("quarterly", 4));
        return new Plans(tiers.stream().flatMap(tier -> tier.slots().stream()).map(Slot::scope).distinct().toList(),
                tiers,
                List.of(new CatchUp("heavy-scale", Wording.same("heavy scale"), List.of("descale"), Place.NOWHERE)),
                Optional.of(new FilterRule("filter", Optional.empty(), 6, Place.NOWHERE)),
                FlatPrices.NONE, new IntervalRules(new BigDecimal("181"), 1, 1, 1));
    }

    /** Full cleans of descaling and brushing, ten percent off, to steps of five. */
    public static Tier tier(String id, int slots) {
        return tier(id, IntStream.range(0, slots).mapToObj(i -> Scope.Kind.FULL_CLEAN).toList(), IncludedCalls.NONE);
    }

    public static Tier tier(String id, List<Scope.Kind> slots, IncludedCalls included) {
        Place place = new Place("pricing/tiers.yaml", 30, "");
        return new Tier(id, Wording.same(id),
                slots.stream()
                        .map(kind -> new Slot(Wording.same("visit"),
                                new Scope(kind.name(), Wording.same(kind.name()), kind,
                                        kind == Scope.Kind.FULL_CLEAN
                                                ? List.of("descale", "brush-condenser")
                                                : List.of("brush-condenser"),
                                        place)))
                        .toList(),
                List.of(), Map.of("standard", 24, "after-hours", 24, "sundays-and-holidays", 48), included,
                Percent.of("10"), Optional.empty(), Map.of(ChargeClass.REPAIR, Percent.of("10")), usd("5"),
                Percent.of("5"), place);
    }

    private static Map<ChargeClass, Percent> allClasses(Percent percent) {
        return EnumSet.allOf(ChargeClass.class).stream()
                .collect(Collectors.toMap(chargeClass -> chargeClass, chargeClass -> percent));
    }

    /** One of those that come with the program. */
    public static SiteKind kind(String id) {
        return SiteKindsReader.read(List.of()).named(id, Place.NOWHERE).orElseThrow();
    }

    public static Address address() {
        return new Address(List.of("12 Mill Lane"), "Alderton", "NY", "10999", "US");
    }

    public static Customer customer() {
        return new Customer("Quern & Tabb", Optional.empty(),
                Timeline.always(
                        new BillTo("Quern & Tabb", Optional.empty(), address(), Optional.empty(), Optional.empty())),
                Optional.empty(), Optional.empty(), false, List.of(), Optional.empty(), Contacts.NONE,
                Optional.empty(), MailWishes.USUAL);
    }

    public static Site site() {
        return site(customer(), "8");
    }

    public static Site site(Customer customer, String miles) {
        return site(customer, miles, machine("head", Machine.Make.BATCH, "500"));
    }

    /** The head makes more ice than any dose of the fixture is made for. */
    public static Site siteWithLargeHead() {
        return site(customer(), "8", machine("head", Machine.Make.BATCH, "1900"));
    }

    private static Site site(Customer customer, String miles, Machine head) {
        return new Site("bakery", customer, List.of(), "Mill Lane", Optional.of("0042"), address(), kind("bakery"),
                Conditions.UNKNOWN, new BigDecimal(miles), Optional.of("alder"), Optional.empty(), Set.of(), Set.of(),
                Optional.empty(),
                Optional.empty(), List.of(head,
                        machine("flaker", Machine.Make.CONTINUOUS, "900")),
                Layout.USUAL, List.of(), Contacts.NONE, Optional.empty());
    }

    private static Machine machine(String id, Machine.Make make, String harvestRate) {
        return new Machine(id, "demo", "back room", make, Machine.Form.HEAD, Machine.Cooling.AIR, Optional.empty(),
                new BigDecimal(harvestRate), Optional.of("SN-1"), Optional.empty(),
                id.equals("head")
                        ? Optional.of(new Machine.Warranty(LocalDate.of(2027, 1, 1),
                                LocalDate.of(2025, 1, 1), "Frostworks"))
                        : Optional.empty(),
                Optional.empty(), Optional.empty(), Machine.Connection.HARD_WIRED,
                make == Machine.Make.BATCH ? Optional.of(Machine.Storage.BIN) : Optional.empty(), true,
                Optional.empty());
    }
}
