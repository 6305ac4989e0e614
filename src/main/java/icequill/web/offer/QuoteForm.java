package icequill.web.offer;

import icequill.answer.forecast.ForecastInputs.Stops;
import icequill.answer.quote.QuoteEntry;
import icequill.answer.quote.QuoteEntry.Choice;
import icequill.files.yaml.Languages;
import icequill.office.quoting.TypedQuote;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Asked;
import icequill.web.page.TypedNumber;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A maintenance quote as the fields of its page have it, made into the keys that its forms have. */
final class QuoteForm {

    /** The names of its fields that hold days. */
    static final Pattern DAYS = Pattern.compile("day|start|(?:cleaned|brushed)-.+");

    private static final String USUAL_MINUTES = "60";
    private static final List<String> OWN_COSTS = List.of("iceBought", "spoiledTrade", "emergencyPremium",
            "secondTrip");

    private final Asked asked;
    private final QuoteEntry entry;
    private final LocalDate day;
    private final Optional<Language> language;
    private final Problems problems = new Problems();
    private final Optional<NewSiteForm> site;
    private final FilledForm request;
    private final FilledForm brushing;
    /** What the book calls each machine, by how its fields begin. */
    private final Map<String, String> machines = new LinkedHashMap<>();

    QuoteForm(Asked asked, QuoteEntry entry) {
        this.asked = asked;
        this.entry = entry;
        this.day = asked.day("day", problems)
                .orElse(entry.day());
        this.language = asked.text("language").flatMap(this::known);
        this.site = entry.site().isPresent() ? Optional.empty() : Optional.of(new NewSiteForm(asked, problems));
        site.ifPresentOrElse(fresh -> machines.putAll(fresh.machines()),
                () -> entry.machines().forEach(machine -> machines.put(machine.id(), machine.id())));
        this.request = FilledForm.of(asked, problems);
        this.brushing = FilledForm.of(asked, problems);
        plan();
        survey();
        calls();
        guesses();
        brushing();
    }

    /** By whose prices it is quoted. */
    LocalDate day() {
        return day;
    }

    /** Of its papers; empty for the customer's. */
    Optional<Language> language() {
        return language;
    }

    private Optional<Language> known(String tag) {
        Optional<Language> known = Language.ofTag(tag).filter(Languages::isKnown);
        if (known.isEmpty()) {
            problems.add(Code.NOT_ALLOWED, new Place("", 0, "language"), "there are no words for \"" + tag + "\"",
                    Languages.known().stream().map(Language::tag).collect(Collectors.joining(", ")));
        }
        return known;
    }

    /** What was typed, or what cannot be read of it. */
    Validated<TypedQuote> typed() {
        return problems.or(() -> new TypedQuote(request.values(), site.map(fresh -> fresh.form().values()),
                brushing.values().containsKey("minutes") ? Optional.of(brushing.values()) : Optional.empty()));
    }

    /** The problems, each at the field in which it was typed. */
    List<Problem> atFields(List<Problem> found) {
        return found.stream().map(problem -> new Problem(problem.code(), new Place("", 0, field(problem)),
                problem.message(), problem.allowed())).distinct().toList();
    }

    private String field(Problem problem) {
        Place place = problem.place();
        Optional<String> field = switch (place.file()) {
        case TypedQuote.REQUEST -> request.field(problem);
        case TypedQuote.BRUSHING -> brushing.field(problem);
        default -> site.filter(fresh -> fresh.id().equals(place.file())).flatMap(fresh -> fresh.form().field(problem));
        };
        return field.orElse(place.file().isEmpty() ? place.path() : "");
    }

    private String siteId() {
        return entry.site().or(() -> site.map(NewSiteForm::id)).orElseThrow();
    }

    private List<String> ticked(String field) {
        return machines.keySet().stream().filter(asked.texts(field)::contains).toList();
    }

    /** Machines, those of a new customer all. */
    private List<String> caredFor() {
        return site.isPresent() ? List.copyOf(machines.keySet()) : ticked("machine");
    }

    private List<String> ids(List<String> keys) {
        return keys.stream().map(machines::get).toList();
    }

    private void plan() {
        request.put("site", siteId(), "customerName");
        List<String> cared = caredFor();
        if (cared.isEmpty()) {
            String field = site.isPresent() ? "new0-where" : "machine";
            problems.add(Code.MISSING, new Place("", 0, field), "no machine is to be looked after",
                    "at least one of the site's machines");
        } else if (cared.size() < machines.size()) {
            request.put("machines", ids(cared), "machine");
        }
        request.day("start", "start").whole("months", "months").text("billing", "billing", "quarterly")
                .whole("holdsDays", "holdsDays").text("emptiesBin", "emptiesBin", "shop").time("arrive", "arrive");
        if (asked.text("start").isEmpty()) {
            problems.add(Code.MISSING, new Place("", 0, "start"), "the first day of the term is missing", "");
        }
        if (asked.text("annex").filter("no"::equals).isPresent()) {
            request.put("withoutAnnex", true, "annex");
        }
        List<String> plans = entry.plans().stream().map(Choice::id).filter(asked.texts("plan")::contains).toList();
        if (!plans.isEmpty() && plans.size() < entry.plans().size()) {
            request.put("tiers", plans, "plan");
        }
        asked.text("second").ifPresent(second -> request.put("crew",
                List.of(asked.text("first").orElse(entry.grades().getFirst().id()), second), "second"));
        entry.scopes().forEach(scope -> request.whole("minutes." + scope.id(), "minutes-" + scope.id()));
    }

    private void survey() {
        int row = 0;
        int known = 0;
        for (String key : caredFor()) {
            List<String> found = entry.findings().stream().map(Choice::id)
                    .filter(asked.texts("found-" + key)::contains).toList();
            boolean isSurveyed = !found.isEmpty() || asked.text("note-" + key).isPresent();
            if (isSurveyed) {
                String path = "survey.machines[" + row + "].";
                request.put(path + "machine", id(key), "found-" + key).text(path + "note", "note-" + key)
                        .day(path + "lastCleaned", "cleaned-" + key);
                if (!found.isEmpty()) {
                    request.put(path + "found", found, "found-" + key);
                }
                row++;
            }
            if (asked.text("brushed-" + key).isPresent()
                    || (!isSurveyed && asked.text("cleaned-" + key).isPresent())) {
                String path = "forecast.machines[" + known + "].";
                request.put(path + "machine", id(key), "cleaned-" + key).day(path + "lastCleaned", "cleaned-" + key)
                        .day(path + "lastBrushed", "brushed-" + key);
                known++;
            }
        }
        if (row > 0) {
            request.put("survey.date", String.valueOf(day), "day");
        }
    }

    private String id(String key) {
        return Objects.requireNonNull(machines.get(key));
    }

    private void calls() {
        request.whole("calls.lastYear", "callsLastYear").whole("calls.minutes", "callMinutes")
                .text("calls.on", "callOn", "repair");
        if (asked.text("callMinutes").isEmpty()) {
            request.put("calls.minutes", Integer.valueOf(USUAL_MINUTES), "callMinutes");
        }
        entry.lastYear().filter(book -> asked.text("callsLastYear").filter(String.valueOf(book.calls())::equals)
                .isPresent()).ifPresent(book -> request.put("forecast.visits", book.visits(), "callsLastYear"));
        OWN_COSTS.forEach(cost -> request.number("forecast.ownCosts." + cost, cost));
    }

    /** Only what differs from the shop's, so that what is the shop's stays so. */
    private void guesses() {
        entry.guesses().ifPresent(shops -> {
            Map<String, BigDecimal> faults = new LinkedHashMap<>();
            faults.put("low", shops.faults().low());
            faults.put("usual", shops.faults().usual());
            faults.put("high", shops.faults().high());
            guess("randomFaults", "faults", faults);
            guess("condenser", "condenser",
                    stops(shops.condenser().low(), shops.condenser().usual(), shops.condenser().high()));
            guess("water", "water", stops(shops.water().low(), shops.water().usual(), shops.water().high()));
        });
    }

    private static Map<String, BigDecimal> stops(Stops low, Stops usual, Stops high) {
        Map<String, BigDecimal> stops = new LinkedHashMap<>();
        stops.put("low.by6", low.by6());
        stops.put("low.by12", low.by12());
        stops.put("usual.by6", usual.by6());
        stops.put("usual.by12", usual.by12());
        stops.put("high.by6", high.by6());
        stops.put("high.by12", high.by12());
        return stops;
    }

    private void guess(String key, String field, Map<String, BigDecimal> shops) {
        Map<String, BigDecimal> typed = new LinkedHashMap<>();
        shops.forEach((part, usual) -> typed.put(part, number(field + "-" + part).orElse(usual)));
        Optional<String> from = asked.text(field + "-from").filter(who -> !who.equals("shop"));
        boolean isOther = from.isPresent()
                || shops.entrySet().stream().anyMatch(part -> part.getValue().compareTo(
                        Objects.requireNonNull(typed.get(part.getKey()))) != 0);
        if (isOther) {
            String path = "forecast.assume." + key + ".";
            typed.forEach((part, value) -> request.put(path + part, value, field + "-" + part));
            from.filter("customer"::equals).ifPresent(who -> request.put(path + "from", who, field + "-from"));
            if (from.filter("visits"::equals).isPresent()) {
                request.whole(path + "visits", field + "-visits");
                if (asked.text(field + "-visits").isEmpty()) {
                    problems.add(Code.MISSING, new Place("", 0, field + "-visits"),
                            "from how many visits is missing", "a number from 1");
                }
            }
        }
    }

    private Optional<BigDecimal> number(String field) {
        return asked.text(field).flatMap(text -> problems.take(TypedNumber.of(text, field)));
    }

    private void brushing() {
        List<String> reachable = ticked("reach");
        boolean isTold = !reachable.isEmpty() || asked.text("ownMinutes").isPresent()
                || asked.text("ownWage").isPresent() || asked.text("ownBrush").isPresent();
        brushing.put("site", siteId(), "customerName").whole("minutes", "ownMinutes").number("wage", "ownWage")
                .number("brush", "ownBrush").put("reachable", ids(reachable), "reach");
        if (isTold) {
            List.of("ownMinutes", "ownWage", "ownBrush").stream().filter(field -> asked.text(field).isEmpty())
                    .forEach(field -> problems.add(Code.MISSING, new Place("", 0, field),
                            "for a brushing sheet this is missing", "a number"));
        }
    }
}
