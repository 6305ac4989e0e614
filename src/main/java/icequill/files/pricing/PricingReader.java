package icequill.files.pricing;

import icequill.agreement.NoticeRule;
import icequill.agreement.NoticeRules;
import icequill.agreement.Plans;
import icequill.files.yaml.Fields;
import icequill.files.yaml.SchemaCheck;
import icequill.files.yaml.Tree;
import icequill.forecast.effects.EnergyLimits;
import icequill.forecast.inputs.ForecastRates;
import icequill.party.Period;
import icequill.party.SiteKinds;
import icequill.party.Timeline;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.rates.Adjustments;
import icequill.rates.LaborRates;
import icequill.rates.Material;
import icequill.rates.RateSchedule;
import icequill.rates.RateSchedule.DatedSheet;
import icequill.rates.ServiceCallRates;
import icequill.tax.TaxPlace;
import icequill.tax.TaxRules;
import icequill.work.Task;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;

/** Makes the rate schedule, the tax rules and the laws about renewal notices and energy from all files of pricing/. For one run. */
public final class PricingReader {

    private static final String FOLDER = "pricing";
    private static final List<String> NEEDED = List.of("labor", "service-call", "materials", "tasks", "adjustments",
            "tiers", "notices", "taxes");
    /** Without it, energy is told from nameplates alone. */
    private static final String ENERGY = "energy";
    /** Without it, nothing is known of refrigerants and the law about them. */
    private static final String REFRIGERANTS = "refrigerants";
    private static final String FORECAST = "forecast";
    /** Without it, the kinds that come with the program. */
    private static final String SITE_KINDS = "site-kinds";
    /** Without one, everybody pays the shop's prices. */
    private static final String RATE_SHEET = "rate-sheet";
    private static final List<String> KINDS = Stream
            .concat(NEEDED.stream(), Stream.of(FORECAST, ENERGY, REFRIGERANTS, SITE_KINDS, RATE_SHEET))
            .toList();

    private final CurrencyUnit currency;
    private final int paymentDays;
    private final SiteKinds kinds;
    private final Problems problems;
    private final List<Timeline.Entry<LaborRates>> labor = new ArrayList<>();
    private final List<Timeline.Entry<ServiceCallRates>> serviceCall = new ArrayList<>();
    private final List<Timeline.Entry<List<Material>>> materials = new ArrayList<>();
    private final List<Timeline.Entry<List<Task>>> tasks = new ArrayList<>();
    private final List<Timeline.Entry<Adjustments>> adjustments = new ArrayList<>();
    private final List<Timeline.Entry<Plans>> plans = new ArrayList<>();
    private final List<Timeline.Entry<List<NoticeRule>>> notices = new ArrayList<>();
    private final List<Timeline.Entry<List<TaxPlace>>> taxes = new ArrayList<>();
    private final List<Timeline.Entry<ForecastRates>> forecasts = new ArrayList<>();

    /** @param paymentDays from an invoice of the shop to the day it is due */
    public PricingReader(CurrencyUnit currency, int paymentDays, SiteKinds kinds, Problems problems) {
        this.currency = currency;
        this.paymentDays = paymentDays;
        this.kinds = kinds;
        this.problems = problems;
    }

    /**
     * What pricing/ says; empty where a kind that is needed could not be read at all. A shop need neither forecast nor have limits
     * of energy.
     */
    public record Pricing(Optional<RateSchedule> schedule, Optional<TaxRules> taxes, Optional<NoticeRules> notices,
            EnergyLimits energy, Timeline<ForecastRates> forecasts) {}

    /**
     * Reads all price files of a shop.
     *
     * @param known files, each of a kind that {@link #checked} has seen
     */
    public Pricing read(List<Fields> known) {
        Set<String> bands = new LinkedHashSet<>();
        for (Fields file : ofKind("labor", known)) {
            LaborReader reader = new LaborReader(file, currency);
            bands.addAll(reader.bandIds());
            add(labor, file, reader.read());
        }
        ofKind("service-call", known)
                .forEach(file -> add(serviceCall, file, new ServiceCallReader(file, currency, bands).read()));
        ofKind("materials", known)
                .forEach(file -> add(materials, file, Optional.of(new MaterialsReader(file, currency).read())));
        Set<String> named = ids("materials", "items", known);
        ofKind("tasks", known).forEach(file -> add(tasks, file, Optional.of(new TasksReader(file, named).read())));
        ofKind("adjustments", known)
                .forEach(file -> add(adjustments, file,
                        Optional.of(new AdjustmentsReader(file, currency, paymentDays).read())));
        TiersReader.Known others = new TiersReader.Known(bands, named, ids("tasks", "tasks", known));
        ofKind("tiers", known)
                .forEach(file -> add(plans, file, Optional.of(new TiersReader(file, currency, others).read())));
        ofKind("taxes", known).forEach(file -> add(taxes, file, Optional.of(TaxesReader.read(file, currency))));
        ofKind(FORECAST, known)
                .forEach(file -> add(forecasts, file, new ForecastReader(file, currency, others, kinds).read()));
        ofKind("notices", known).forEach(file -> add(notices, file, Optional.of(NoticesReader.read(file))));
        boolean complete = Stream
                .of(there("labor", labor), there("service-call", serviceCall), there("materials", materials),
                        there("tasks", tasks), there("adjustments", adjustments), there("tiers", plans))
                .reduce(true, Boolean::logicalAnd);
        RateSchedule schedule = new RateSchedule(currency, timeline(labor), timeline(serviceCall), timeline(materials),
                timeline(tasks), timeline(adjustments), timeline(plans), sheets(bands, named, known),
                RefrigerantsReader.read(ofKind(REFRIGERANTS, known)));
        TaxRules rules = new TaxRules(timeline(taxes));
        NoticeRules laws = new NoticeRules(timeline(notices));
        return new Pricing(complete ? Optional.of(schedule) : Optional.empty(),
                there("taxes", taxes) ? Optional.of(rules) : Optional.empty(),
                there("notices", notices) ? Optional.of(laws) : Optional.empty(),
                new EnergyLimits(ofKind(ENERGY, known).stream().flatMap(file -> EnergyReader.read(file).stream())
                        .toList()),
                timeline(forecasts));
    }

    private List<DatedSheet> sheets(Set<String> bands, Set<String> named, List<Fields> known) {
        RateSheetReader.Known others = new RateSheetReader.Known(bands, ids("labor", "grades", known),
                ids("service-call", "zones", known), named,
                Stream.of("fees", "surcharges").flatMap(list -> ids("adjustments", list, known).stream())
                        .collect(Collectors.toSet()));
        List<DatedSheet> sheets = new ArrayList<>();
        for (Fields file : ofKind(RATE_SHEET, known)) {
            Optional<Period> period = period(file);
            new RateSheetReader(file, currency, others).read().ifPresent(sheet -> period.ifPresent(days -> {
                DatedSheet dated = new DatedSheet(days, sheet);
                sheets.stream().filter(dated::rivals).findFirst().ifPresent(other -> problems.add(Code.OVERLAP,
                        sheet.place(), "on the same days as \"" + other.sheet().id() + "\", at "
                                + other.sheet().place().reference() + ", and for the same customer or site",
                        "one sheet for each at a time"));
                sheets.add(dated);
            }));
        }
        return sheets;
    }

    /** Whether rates of a kind were read. Their absence is a problem of its own only where no file has one already. */
    private boolean there(String kind, List<?> entries) {
        boolean explained = problems.list().stream().anyMatch(problem -> problem.place().file().startsWith(FOLDER));
        if (entries.isEmpty() && !explained) {
            problems.add(Code.MISSING, Place.ofFile(FOLDER), "there is no file of kind " + kind,
                    "one file or more of each kind: " + String.join(", ", NEEDED));
        }
        return !entries.isEmpty();
    }

    /** The ids in the lists of all files of a kind. */
    private static Set<String> ids(String kind, String list, List<Fields> files) {
        return ofKind(kind, files).stream().flatMap(file -> file.ids(list).stream()).collect(Collectors.toSet());
    }

    private static List<Fields> ofKind(String kind, List<Fields> files) {
        return files.stream().filter(file -> file.text("kind").filter(kind::equals).isPresent()).toList();
    }

    /** A file held against the schema of its kind; empty when it is of none. */
    public static Optional<Fields> checked(Tree tree, Problems problems) {
        if (!(tree instanceof Tree.Branch branch)) {
            problems.add(Code.WRONG_TYPE, tree.place(), "the file holds no keys and values", "kind: and the rates");
            return Optional.empty();
        }
        Fields fields = new Fields(branch, problems);
        Optional<String> kind = fields.text("kind");
        if (kind.isEmpty() || !KINDS.contains(kind.get())) {
            problems.add(new Problem(Code.NOT_ALLOWED, fields.place("kind"),
                    kind.map(name -> "there is no kind of rates \"" + name + "\"").orElse("\"kind\" is missing"),
                    Problem.oneOf(kind.orElse(""), KINDS)));
            return Optional.empty();
        }
        problems.addAll(SchemaCheck.check(tree, "/icequill/pricing/schema/" + kind.get() + ".schema.json"));
        return Optional.of(fields);
    }

    private static Optional<Period> period(Fields file) {
        return file.child("effective").flatMap(effective -> effective.day("from")
                .flatMap((LocalDate from) -> effective.period(from)));
    }

    private static <T> void add(List<Timeline.Entry<T>> entries, Fields file, Optional<T> value) {
        Optional<Period> period = period(file);
        value.ifPresent(found -> period
                .ifPresent(days -> entries.add(new Timeline.Entry<>(days, found, file.place("effective")))));
    }

    private <T> Timeline<T> timeline(List<Timeline.Entry<T>> entries) {
        return problems.take(Timeline.of(entries)).orElseGet(() -> new Timeline<>(entries));
    }
}
