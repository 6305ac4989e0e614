package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.party.Wording;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.rates.Counting;
import icequill.rates.Counting.Overtime;
import icequill.rates.CrewRules;
import icequill.rates.Grade;
import icequill.rates.HourPrices;
import icequill.rates.LaborRates;
import icequill.work.Band;
import icequill.work.BandWeek;
import icequill.work.BandWeek.Window;
import icequill.work.Holiday;
import icequill.work.Holiday.Observed;
import icequill.work.Qualification;
import icequill.work.TechnicianCertificate;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.Month;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes the labor rates from a file of kind labor. */
final class LaborReader {

    private static final int MINUTES_PER_HOUR = 60;

    private final Fields fields;
    private final CurrencyUnit currency;
    private final List<Band> bands;
    private final Set<String> bandIds;

    LaborReader(Fields fields, CurrencyUnit currency) {
        this.fields = fields;
        this.currency = currency;
        this.bands = Names.list(fields.children("bands"),
                (id, entry) -> entry.wording("name").map(name -> new Band(id, name)));
        this.bandIds = fields.ids("bands");
    }

    /**
     * Empty when no band could be read. Any other value that is missing or wrong was reported, so nothing will be priced; something
     * stands in for it, so that the names in visits are looked up all the same.
     */
    Optional<LaborRates> read() {
        List<Window> windows = fields.children("week").stream().flatMap(entry -> window(entry).stream()).toList();
        Optional<Band> onHolidays = band(fields, "onHolidays");
        Optional<Band> otherwise = band(fields, "otherwise");
        List<Holiday> holidays = fields.children("holidays").stream().flatMap(entry -> holiday(entry).stream())
                .toList();
        List<Grade> grades = Names.list(fields.children("grades"), this::grade);
        if (bands.isEmpty()) {
            return Optional.empty();
        }
        BandWeek week = new BandWeek(windows, onHolidays.orElse(bands.getFirst()), otherwise.orElse(bands.getFirst()),
                holidays);
        return Optional.of(new LaborRates(bands, week, grades, counting(),
                new CrewRules(fields.child("break").flatMap(LaborReader::rest),
                        fields.constant("onRoof", CrewRules.OnRoof.class).orElse(CrewRules.NONE.onRoof()),
                        fields.children("certificates").stream().flatMap(entry -> certificate(entry).stream())
                                .toList())));
    }

    private static Optional<TechnicianCertificate> certificate(Fields entry) {
        return entry.text("person").flatMap(person -> entry.constant("type", TechnicianCertificate.Type.class)
                .map(type -> new TechnicianCertificate(person, type, entry.text("number"))));
    }

    private static Optional<CrewRules.Break> rest(Fields entry) {
        Optional<Integer> after = entry.integer("after").filter(minutes -> minutes > 0);
        return after.flatMap(due -> entry.integer("minutes").filter(minutes -> minutes > 0)
                .map(minutes -> new CrewRules.Break(due, minutes)));
    }

    /** Of all bands, also of those with faults of their own. */
    Set<String> bandIds() {
        return bandIds;
    }

    private Optional<Band> band(Fields at, String key) {
        Optional<String> id = at.text(key);
        Optional<Band> band = bands.stream().filter(known -> id.filter(known.id()::equals).isPresent()).findFirst();
        if (id.isPresent() && !bandIds.isEmpty() && !bandIds.contains(id.get())) {
            at.problems().add(Problem.unknownName(at.place(key), "labor band", id.get(), bandIds));
        }
        return band;
    }

    private Optional<Window> window(Fields entry) {
        Set<DayOfWeek> days = entry.leaves("days").stream().flatMap(leaf -> weekday(leaf.text()).stream())
                .collect(Collectors.toSet());
        Optional<LocalTime> from = entry.time("from");
        Optional<LocalTime> until = entry.end("until");
        Optional<Band> band = band(entry, "band");
        if (from.isEmpty() || until.isEmpty() || band.isEmpty()) {
            return Optional.empty();
        }
        if (!until.get().equals(LocalTime.MIDNIGHT) && !from.get().isBefore(until.get())) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("until"),
                    "until " + until.get() + ", but from " + from.get(),
                    "a later time, up to \"24:00\"; hours over midnight are two entries");
            return Optional.empty();
        }
        return Optional.of(new Window(days, from.get(), until.get(), band.get()));
    }

    private Optional<Holiday> holiday(Fields entry) {
        Optional<Wording> name = entry.wording("name");
        Optional<Holiday.Rule> rule = rule(entry);
        if (rule.isEmpty()) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place(), "not a rule for a holiday",
                    "yearly: \"12-25\", or nth with weekday and month, or once: a day");
        }
        return name.flatMap(found -> rule.map(day -> new Holiday(found, day)));
    }

    private static Optional<Holiday.Rule> rule(Fields entry) {
        Optional<String> yearly = entry.text("yearly").filter(text -> text.matches("\\d\\d-\\d\\d"));
        Optional<Integer> nth = entry.integer("nth").filter(count -> count == -1 || (count >= 1 && count <= 4));
        Optional<DayOfWeek> weekday = entry.text("weekday").flatMap(LaborReader::weekday);
        Optional<Integer> month = entry.integer("month").filter(number -> number >= 1 && number <= 12);
        if (yearly.isPresent()) {
            try {
                return Optional.of(new Holiday.Yearly(MonthDay.parse("--" + yearly.get()),
                        entry.constant("observed", Observed.class).orElse(Observed.NEVER)));
            } catch (DateTimeException noSuchDay) {
                return Optional.empty();
            }
        }
        if (nth.isPresent() && weekday.isPresent() && month.isPresent()) {
            return Optional.of(new Holiday.NthWeekday(nth.get(), weekday.get(), Month.of(month.get())));
        }
        return entry.day("once").map(Holiday.Once::new);
    }

    private static Optional<DayOfWeek> weekday(String text) {
        return Arrays.stream(DayOfWeek.values())
                .filter(day -> day.name().substring(0, 3).toLowerCase(Locale.ROOT).equals(text)).findFirst();
    }

    private Counting counting() {
        Map<String, BigDecimal> increments = Prices.everyBand(fields, "increment", bandIds, "number of minutes",
                (entry, key) -> entry.number(key).filter(minutes -> minutes.signum() > 0));
        Map<String, BigDecimal> all = new HashMap<>(increments);
        bandIds.forEach(band -> all.putIfAbsent(band, BigDecimal.ONE));
        Optional<Overtime> overtime = fields.child("overtime").flatMap(entry -> band(entry, "band").flatMap(
                band -> entry.integer("after").map(hours -> new Overtime(hours * MINUTES_PER_HOUR, band))));
        return new Counting(all, fields.constant("counted", Counting.Per.class).orElse(Counting.Per.PERSON), overtime);
    }

    private Optional<Grade> grade(String id, Fields entry) {
        Map<String, Integer> minimum = new HashMap<>(
                Prices.everyBand(entry, "minimum", bandIds, "number of minutes", Fields::integer));
        bandIds.forEach(band -> minimum.putIfAbsent(band, 0));
        Map<String, MonetaryAmount> wage = Prices.everyBand(entry, "wage", bandIds, "wage",
                (wages, key) -> Prices.amount(wages, key, currency));
        HourPrices hourly = new HourPrices(Prices.byBand(entry, "hourly", bandIds, currency),
                Prices.byBand(entry, "firstHour", bandIds, currency), Prices.byBand(entry, "travel", bandIds, currency),
                wage);
        return entry.wording("name").filter(name -> !wage.isEmpty()).map(name -> new Grade(id, name, hourly, minimum,
                Set.copyOf(entry.constants("qualified", Qualification.class)), entry.place("hourly")));
    }
}
