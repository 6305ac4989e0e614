package icequill.office.quoting;

import icequill.agreement.GoingOn;
import icequill.document.MaintenanceQuote;
import icequill.document.PlanYear;
import icequill.explain.ConstantKey;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.Tree;
import icequill.files.yaml.Tree.Leaf;
import icequill.ledger.Reading;
import icequill.ledger.entries.AgreementEntry;
import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.money.Amounts;
import icequill.problem.Place;
import icequill.shop.EntryId;
import icequill.shop.life.QuoteLife;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The agreement that a maintenance quote becomes, as the form that somebody would have written: what the quote was asked for, the plan that was
 * chosen, and its price as it was promised.
 *
 * @param request what the quote was made from, as JSON
 */
record AcceptedPlan(QuoteLife life, MaintenanceQuote quote, String request, Acceptance acceptance) {

    private static final List<String> SAME = List.of("format", "site", "machines", "months", "billing", "modifiers",
            "arrive", "crew", "minutes", "includedCalls");
    private static final int USUAL_DAYS = 30;
    private static final int MOST_NUMBERS = 999_999;

    /** @param open where its number is looked for */
    Form form(AgreementWish wish, Reading open) {
        Tree.Branch asked = (Tree.Branch) Form.stored(FormKind.MAINTENANCE_REQUEST, life.issued().number(), request)
                .tree();
        Map<String, Tree> entries = new LinkedHashMap<>();
        SAME.stream().filter(asked.entries()::containsKey).forEach(key -> entries.put(key, asked.entries().get(key)));
        String number = wish.number().orElseGet(() -> free(open));
        put(entries, "number", number);
        put(entries, "tier", plan().tier().id());
        put(entries, "priced", quote.date());
        put(entries, "start", wish.start().orElseGet(this::start));
        entries.put("accepted", pair("date", text(acceptance.day()), "paper", named()));
        entries.put("agreed", pair("price", number(Amounts.plain(plan().price())), "from", named()));
        acceptance.purchaseOrder().ifPresent(order -> put(entries, "purchaseOrder", order));
        entries.put("cancelDays", number(wish.cancelDays().orElse(USUAL_DAYS)));
        entries.put("renewal", renewal(wish));
        return new Form(Optional.of(FormKind.AGREEMENT), EntryId.of(number), branch(entries));
    }

    private PlanYear plan() {
        return quote.plans().stream().filter(year -> acceptance.plan().filter(year.tier().id()::equals).isPresent())
                .findFirst().orElseThrow();
    }

    private LocalDate start() {
        LocalDate asked = quote.term().start();
        return asked.isBefore(acceptance.day()) ? acceptance.day() : asked;
    }

    private Tree.Branch renewal(AgreementWish wish) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        GoingOn goingOn = wish.goingOn().orElse(GoingOn.BY_TERM);
        put(entries, "goesOn", ConstantKey.of(goingOn));
        if (goingOn != GoingOn.BY_MONTH) {
            entries.put("months", number(wish.months().orElse(quote.term().months())));
        }
        entries.put("refuseDays", number(wish.refuseDays().orElse(USUAL_DAYS)));
        entries.put("jurisdictions", new Tree.Row(List.of(text(jurisdiction())), Place.NOWHERE));
        wish.raise().ifPresent(percent -> entries.put("raise", branch(Map.of("percent", number(percent)))));
        return branch(entries);
    }

    /** By ISO 3166, that of the machines. */
    private String jurisdiction() {
        String country = quote.where().address().country();
        String region = quote.where().address().region();
        return (region.isEmpty() ? country : country + "-" + region).toUpperCase(Locale.ROOT);
    }

    /** The next after those of its year that are made in the same way. */
    private String free(Reading open) {
        int year = acceptance.day().getYear();
        Pattern made = Pattern.compile("A-" + year + "-0*([0-9]{1,6})");
        int last = open.entries().agreements().stream().map(AgreementEntry::number).map(made::matcher)
                .filter(matcher -> matcher.matches()).mapToInt(matcher -> Integer.parseInt(matcher.group(1)))
                .filter(count -> count < MOST_NUMBERS).max().orElse(0);
        return String.format(Locale.ROOT, "A-%d-%03d", year, last + 1);
    }

    private Leaf named() {
        return text("quote " + life.issued().number());
    }

    private static Tree.Branch pair(String first, Leaf one, String second, Leaf other) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        entries.put(first, one);
        entries.put(second, other);
        return branch(entries);
    }

    private static void put(Map<String, Tree> entries, String key, Object value) {
        entries.put(key, text(value));
    }

    private static Leaf text(Object value) {
        return Leaf.of(value.toString(), Leaf.Kind.TEXT, Place.NOWHERE);
    }

    private static Leaf number(Object value) {
        return Leaf.of(value.toString(), Leaf.Kind.NUMBER, Place.NOWHERE);
    }

    private static Tree.Branch branch(Map<String, Tree> entries) {
        return new Tree.Branch(entries, Map.of(), Place.NOWHERE);
    }
}
