package icequill.files.form;

import icequill.agreement.Acceptance;
import icequill.agreement.GoingOn;
import icequill.agreement.Raise;
import icequill.agreement.RenewalTerms;
import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Tree;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.request.AgreementRequest;
import icequill.request.AgreementRequest.RaiseBy;
import icequill.request.PlanScope;
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

    private final Fields fields;
    private final Shop shop;

    public AgreementReader(Fields fields, Shop shop) {
        this.fields = fields;
        this.shop = shop;
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    public Optional<AgreementRequest> read() {
        Optional<PlanScope> scope = PlanScopeReader.read(fields, shop);
        Optional<LocalDate> priced = fields.day("priced");
        Optional<AgreementRequest.Renewal> renewal = scope
                .flatMap(found -> fields.child("renewal").flatMap(entry -> renewal(entry, found)));
        List<AgreementRequest.Change> changes = scope.map(this::changes).orElse(List.of());
        Optional<AgreementRequest.Agreed> agreed = agreed();
        Optional<Acceptance> accepted = fields.child("accepted").flatMap(entry -> entry.day("date")
                .map(day -> new Acceptance(day, entry.text("paper").orElse(""))));
        return scope.flatMap(found -> fields.id("tier").flatMap(tier -> priced.flatMap(day -> renewal
                .flatMap(next -> fields.text("number").map(number -> new AgreementRequest(number, found,
                        new Visit.Named(tier, fields.place("tier")), day, accepted, agreed,
                        fields.integer("cancelDays").orElse(USUAL_NOTICE), next, changes,
                        fields.text("purchaseOrder")))))));
    }

    private Optional<AgreementRequest.Agreed> agreed() {
        return fields.child("agreed").flatMap(entry -> Prices.charged(entry, "price", shop.currency())
                .flatMap(price -> entry.text("from").map(from -> new AgreementRequest.Agreed(price, from))));
    }

    private Optional<AgreementRequest.Renewal> renewal(Fields entry, PlanScope scope) {
        List<String> places = entry.leaves("jurisdictions").stream().map(Tree.Leaf::text).distinct().toList();
        GoingOn goingOn = entry.constant("goesOn", GoingOn.class).orElse(GoingOn.BY_TERM);
        Optional<Integer> months = months(entry, goingOn);
        Optional<RaiseBy> raise = entry.child("raise").flatMap(AgreementReader::raise);
        checkByMonth(entry, goingOn, scope, raise);
        Optional<Integer> days = entry.integer("refuseDays").filter(found -> found >= 0 && found <= 365);
        return months.flatMap(length -> days.filter(found -> !places.isEmpty())
                .map(refuse -> new AgreementRequest.Renewal(new RenewalTerms(scope.term(), refuse, length, goingOn),
                        places, raise, entry.day("noticed"))));
    }

    private static Optional<Integer> months(Fields entry, GoingOn goingOn) {
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

    private List<AgreementRequest.Change> changes(PlanScope scope) {
        List<AgreementRequest.Change> changes = new ArrayList<>();
        for (Fields entry : fields.children("changes")) {
            entry.day("from").ifPresent(from -> {
                if (!scope.term().contains(from) || from.equals(scope.term().start())) {
                    entry.problems().add(Code.OUT_OF_RANGE, entry.place("from"),
                            from + " is not within the term after its first day",
                            "a day from " + scope.term().start().plusDays(1) + " to " + scope.term().lastDay());
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
