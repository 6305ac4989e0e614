package icequill.files.form;

import icequill.agreement.Acceptance;
import icequill.agreement.GoingOn;
import icequill.agreement.Raise;
import icequill.agreement.RenewalTerms;
import icequill.agreement.RestOfTerm;
import icequill.agreement.Term;
import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Tree;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.request.AgreementRequest;
import icequill.request.AgreementRequest.RaiseBy;
import icequill.request.PlanScope;
import icequill.request.StandingOrders;
import icequill.work.Visit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes an agreement from its file. */
public final class AgreementReader {

    private static final int MOST_PERCENT = 100;
    private static final int USUAL_NOTICE = 30;
    private static final int YEAR = 12;
    /** What each of several sites has for itself. */
    public static final List<String> SITE_KEYS = List.of("site", "machines", "crew", "minutes", "modifiers", "arrive",
            "includedCalls", "agreed", "rest");
    /** Payments on days that each site has for itself. */
    private static final List<String> PER_SITE = List.of("per-visit", "open-months");

    private final Fields fields;
    private final Shop shop;

    public AgreementReader(Fields fields, Shop shop) {
        this.fields = fields;
        this.shop = shop;
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    public Optional<AgreementRequest> read() {
        List<Fields> sites = fields.children("sites");
        if (sites.isEmpty()) {
            fields.children("changes").forEach(entry -> entry.id("site").ifPresent(site -> entry.problems().add(
                    Code.NOT_ALLOWED, entry.place("site"), "a change at a site, but the agreement is for one",
                    "the change without a site")));
            if (fields.text("site").isEmpty()) {
                fields.problems().add(Code.MISSING, fields.place(), "nothing says for which site it is",
                        "site: ..., or sites: with two or more");
            }
            return PlanScopeReader.read(fields, shop).flatMap(scope -> read(fields, scope, Optional.empty()));
        }
        checkSites(sites);
        List<AgreementRequest> all = sites.stream().flatMap(entry -> PlanScopeReader.read(fields, entry, shop)
                .flatMap(scope -> read(entry, scope, Optional.of(part(entry, scope)))).stream()).toList();
        return all.size() == sites.size() ? Optional.of(joined(all)) : Optional.empty();
    }

    private static AgreementRequest joined(List<AgreementRequest> all) {
        AgreementRequest first = all.getFirst();
        return new AgreementRequest(first.number(), first.scope(), first.tier(), first.priced(), first.accepted(),
                first.agreed(), first.cancelDays(), first.renewal(), first.changes(), first.orders(),
                first.part(), all.subList(1, all.size()), Optional.empty(), first.rest());
    }

    /** What several sites must not have. */
    private void checkSites(List<Fields> sites) {
        SITE_KEYS.stream().filter(key -> fields.has(key))
                .forEach(key -> fields.problems().add(Code.NOT_ALLOWED, fields.place(key),
                        key + " of the whole, but there are sites", key + " under each of the sites"));
        if (fields.text("billing").filter(PER_SITE::contains).isPresent()) {
            fields.problems().add(Code.NOT_ALLOWED, fields.place("billing"),
                    "several sites have no payments together: billing: " + fields.text("billing").orElse(""),
                    "yearly, quarterly or monthly; or an agreement for each site");
        }
        List<String> known = new ArrayList<>();
        for (Fields site : sites) {
            site.id("site").ifPresent(id -> {
                if (known.contains(id)) {
                    site.problems().add(Code.DUPLICATE_NAME, site.place("site"),
                            "\"" + id + "\" is named a second time",
                            "each site once");
                }
                known.add(id);
            });
        }
        fields.children("changes").forEach(entry -> entry.id("site").ifPresentOrElse(site -> {
            if (!known.contains(site)) {
                entry.problems().add(Problem.unknownName(entry.place("site"), "site of this agreement", site, known));
            }
        }, () -> entry.problems().add(Code.MISSING, entry.place(), "a change that does not say at which site",
                Problem.oneOf("", known))));
    }

    private static AgreementRequest.Part part(Fields entry, PlanScope scope) {
        Optional<LocalDate> from = within(entry, "from", scope);
        Optional<LocalDate> until = within(entry, "until", scope);
        from.flatMap(first -> until.filter(last -> last.isBefore(first))).ifPresent(last -> entry.problems().add(
                Code.WRONG_ORDER, entry.place("until"), "until " + last + ", before it comes in",
                "a day from " + from.orElseThrow() + " on"));
        return new AgreementRequest.Part(from, until);
    }

    private static Optional<LocalDate> within(Fields entry, String key, PlanScope scope) {
        Term term = scope.term();
        Optional<LocalDate> day = entry.day(key);
        Optional<LocalDate> right = day.filter(found -> term.contains(found) && !found.equals(term.start())
                && !(key.equals("until") && found.equals(term.lastDay())));
        if (day.isPresent() && right.isEmpty()) {
            entry.problems().add(Code.OUT_OF_RANGE, entry.place(key),
                    day.get() + " is not within the term after its first day",
                    "a day from " + term.start().plusDays(1) + " to " + term.lastDay() + ", or left out");
        }
        return right;
    }

    /** @param entry what is said of the site alone */
    private Optional<AgreementRequest> read(Fields entry, PlanScope scope, Optional<AgreementRequest.Part> part) {
        Optional<LocalDate> priced = fields.day("priced");
        Optional<AgreementRequest.Renewal> renewal = fields.child("renewal").flatMap(found -> renewal(found, scope));
        Optional<RestOfTerm> rest = rest(entry, scope);
        List<AgreementRequest.Change> changes = changes(scope, part, rest);
        Optional<AgreementRequest.Agreed> agreed = agreed(entry);
        Optional<Acceptance> accepted = fields.child("accepted").flatMap(found -> found.day("date")
                .map(day -> new Acceptance(day, found.text("paper").orElse(""))));
        return fields.id("tier").flatMap(tier -> priced.flatMap(day -> renewal
                .flatMap(next -> fields.text("number").map(number -> new AgreementRequest(number, scope,
                        new Visit.Named(tier, fields.place("tier")), day, accepted, agreed,
                        fields.integer("cancelDays").orElse(USUAL_NOTICE), next, changes,
                        new StandingOrders(fields.text("purchaseOrder"), List.of()), part, List.of(),
                        Optional.empty(), rest)))));
    }

    private Optional<RestOfTerm> rest(Fields site, PlanScope scope) {
        return site.child("rest").flatMap(entry -> within(entry, "from", scope)
                .flatMap(from -> Prices.charged(entry, "price", shop.currency()).flatMap(price -> entry.text("of")
                        .map(of -> new RestOfTerm(of, from, price, entry.day("visit"))))));
    }

    private Optional<AgreementRequest.Agreed> agreed(Fields site) {
        return site.child("agreed").flatMap(entry -> Prices.charged(entry, "price", shop.currency())
                .flatMap(price -> entry.text("from").map(from -> new AgreementRequest.Agreed(price, from))));
    }

    private Optional<AgreementRequest.Renewal> renewal(Fields entry, PlanScope scope) {
        List<String> places = entry.leaves("jurisdictions").stream().map(Tree.Leaf::text).distinct().toList();
        GoingOn goingOn = entry.constant("goesOn", GoingOn.class).orElse(GoingOn.BY_TERM);
        Optional<Integer> months = months(entry, goingOn, scope.term());
        Optional<RaiseBy> raise = entry.child("raise").flatMap(AgreementReader::raise);
        checkByMonth(entry, goingOn, scope, raise);
        Optional<Integer> days = entry.integer("refuseDays").filter(found -> found >= 0 && found <= 365);
        return months.flatMap(length -> days.filter(found -> !places.isEmpty())
                .map(refuse -> new AgreementRequest.Renewal(new RenewalTerms(scope.term(), refuse, length, goingOn),
                        places, raise, entry.day("noticed"))));
    }

    private static Optional<Integer> months(Fields entry, GoingOn goingOn, Term term) {
        Optional<Integer> months = entry.integer("months").filter(found -> found >= 1 && found <= 120);
        if (goingOn == GoingOn.BY_MONTH) {
            months.filter(length -> length > 1).ifPresent(length -> entry.problems().add(Code.NOT_ALLOWED,
                    entry.place("months"), "goes on by the month, but for " + length + " months",
                    "goesOn: by-month without months"));
            return Optional.of(1);
        }
        if (months.isEmpty() && entry.text("months").isEmpty()) {
            entry.problems().add(Code.MISSING, entry.place("goesOn"), "nothing says for how long it goes on",
                    "months: ..., or goesOn: by-month");
        }
        months.filter(length -> length != term.months() && Math.min(length, term.months()) < YEAR)
                .ifPresent(length -> entry.problems().add(Code.NOT_ALLOWED, entry.place("months"),
                        "goes on for " + length + " months at the price of a term of " + term.months() + " months",
                        term.months() < YEAR ? "months: " + term.months() : "months: 12 or more"));
        return months;
    }

    /** What goes on by the month has payments by time, and a price that is known beforehand. */
    private static void checkByMonth(Fields entry, GoingOn goingOn, PlanScope scope, Optional<RaiseBy> raise) {
        if (goingOn != GoingOn.BY_MONTH) {
            entry.day("noticed").ifPresent(day -> entry.problems().add(Code.NOT_ALLOWED, entry.place("noticed"),
                    "notice on " + day + " of an agreement that does not go on by the month", "goesOn: by-month"));
            return;
        }
        entry.day("noticed").filter(day -> day.isBefore(scope.term().start()))
                .ifPresent(day -> entry.problems().add(Code.WRONG_ORDER, entry.place("noticed"),
                        "notice on " + day + ", before the term begins on " + scope.term().start(),
                        "a day of the agreement"));
        if (scope.term().months() < YEAR) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("goesOn"),
                    "goes on by the month after a term of " + scope.term().months()
                            + " months, whose price is no year's",
                    "months: 12 or more, or goesOn: next-season");
        }
        if (scope.billing().isEmpty()) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("goesOn"),
                    "goes on by the month, but is paid visit by visit", "billing: monthly, or goesOn: by-term");
        }
        if (raise.filter(RaiseBy.Repricing.class::isInstance).isPresent()) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("raise"),
                    "goes on by the month at a price that nobody knows beforehand", "raise: percent or index, or none");
        }
    }

    private static Optional<RaiseBy> raise(Fields raise) {
        Optional<RaiseBy> percent = raise.percent("percent", MOST_PERCENT).map(Raise.ByPercent::new)
                .map(RaiseBy.Given::new);
        Optional<RaiseBy> index = raise.child("index").flatMap(entry -> entry.wording("name")
                .flatMap(name -> level(entry, "before").flatMap(before -> level(entry, "now")
                        .map(now -> new RaiseBy.Given(new Raise.ByIndex(name, before, now))))));
        Optional<RaiseBy> repriced = raise.flag("repriced") ? Optional.of(new RaiseBy.Repricing()) : Optional.empty();
        List<RaiseBy> ways = new ArrayList<>();
        List.of(percent, index, repriced).forEach(way -> way.ifPresent(ways::add));
        if (ways.size() > 1) {
            raise.problems().add(Code.NOT_ALLOWED, raise.place(), "the price is raised in " + ways.size() + " ways",
                    "one of percent, index, repriced: true");
        }
        return ways.stream().findFirst();
    }

    private static Optional<BigDecimal> level(Fields index, String key) {
        return index.number(key).filter(level -> level.signum() > 0);
    }

    /** Those of a site, which are within the days on which it is part of the agreement. */
    private List<AgreementRequest.Change> changes(PlanScope scope, Optional<AgreementRequest.Part> part,
            Optional<RestOfTerm> rest) {
        List<AgreementRequest.Change> changes = new ArrayList<>();
        LocalDate first = part.flatMap(AgreementRequest.Part::from).or(() -> rest.map(RestOfTerm::from))
                .orElse(scope.term().start()).plusDays(1);
        LocalDate last = part.flatMap(AgreementRequest.Part::until).orElse(scope.term().lastDay());
        for (Fields entry : fields.children("changes")) {
            if (part.isPresent() && entry.id("site").filter(scope.site()::equals).isEmpty()) {
                continue;
            }
            entry.day("from").ifPresent(from -> {
                if (from.isBefore(first) || from.isAfter(last)) {
                    entry.problems().add(Code.OUT_OF_RANGE, entry.place("from"),
                            from + " is not within the term after its first day",
                            "a day from " + first + " to " + last);
                } else if (!changes.isEmpty() && !from.isAfter(changes.getLast().from())) {
                    entry.problems().add(Code.WRONG_ORDER, entry.place("from"),
                            from + " does not come after the change before it", "changes by rising day");
                } else {
                    changes.add(new AgreementRequest.Change(from, PlanScopeReader.names(entry, "add"),
                            PlanScopeReader.names(entry, "remove"), PlanScopeReader.minutes(entry),
                            entry.place("minutes")));
                }
            });
        }
        return changes;
    }
}
