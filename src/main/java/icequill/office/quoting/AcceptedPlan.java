package icequill.office.quoting;

import icequill.agreement.GoingOn;
import icequill.agreement.UsualTerms;
import icequill.document.MaintenanceQuote;
import icequill.document.PlanYear;
import icequill.explain.ConstantKey;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.Tree;
import icequill.files.yaml.Tree.Leaf;
import icequill.ledger.Reading;
import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.money.Amounts;
import icequill.problem.Place;
import icequill.shop.EntryId;
import icequill.shop.life.AgreementNumber;
import icequill.shop.life.QuoteLife;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The agreement that a maintenance quote becomes, as the form that somebody would have written: what the quote was asked for, the plan that was
 * chosen, and its price as it was promised.
 *
 * @param request what the quote was made from, as JSON
 * @param usual what holds where nobody said something else
 */
record AcceptedPlan(QuoteLife life, MaintenanceQuote quote, String request, Acceptance acceptance, UsualTerms usual) {

    private static final List<String> SAME = List.of("format", "site", "machines", "months", "billing", "modifiers",
            "arrive", "crew", "minutes", "includedCalls");

    /** @param open where its number is looked for */
    Form form(AgreementWish wish, Reading open) {
        Tree.Branch asked = (Tree.Branch) Form.stored(FormKind.MAINTENANCE_REQUEST, life.issued().number(), request)
                .tree();
        Map<String, Tree> entries = new LinkedHashMap<>();
        SAME.stream().filter(asked.entries()::containsKey).forEach(key -> entries.put(key, asked.entries().get(key)));
        String number = wish.number().orElseGet(() -> AgreementNumber.free(open, acceptance.day().getYear()));
        put(entries, "number", number);
        put(entries, "tier", plan().tier().id());
        put(entries, "priced", quote.date());
        put(entries, "start", wish.start().orElseGet(this::start));
        entries.put("accepted", pair("date", Leaf.written(acceptance.day()), "paper", named()));
        entries.put("agreed", pair("price", Leaf.counted(Amounts.plain(plan().price())), "from", named()));
        acceptance.purchaseOrder().ifPresent(order -> put(entries, "purchaseOrder", order));
        entries.put("cancelDays", Leaf.counted(wish.cancelDays().orElse(usual.cancelDays())));
        entries.put("renewal", renewal(wish));
        return new Form(Optional.of(FormKind.AGREEMENT), EntryId.of(number), Tree.Branch.of(entries));
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
            entries.put("months", Leaf.counted(wish.months().or(usual::renewalMonths).orElse(quote.term().months())));
        }
        entries.put("refuseDays", Leaf.counted(wish.refuseDays().orElse(usual.refuseDays())));
        entries.put("jurisdictions", new Tree.Row(List.of(Leaf.written(jurisdiction())), Place.NOWHERE));
        wish.raise()
                .ifPresent(percent -> entries.put("raise", Tree.Branch.of(Map.of("percent", Leaf.counted(percent)))));
        return Tree.Branch.of(entries);
    }

    /** By ISO 3166, that of the machines. */
    private String jurisdiction() {
        String country = quote.where().address().country();
        String region = quote.where().address().region();
        return (region.isEmpty() ? country : country + "-" + region).toUpperCase(Locale.ROOT);
    }

    private Leaf named() {
        return Leaf.written("quote " + life.issued().number());
    }

    private static Tree.Branch pair(String first, Leaf one, String second, Leaf other) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        entries.put(first, one);
        entries.put(second, other);
        return Tree.Branch.of(entries);
    }

    private static void put(Map<String, Tree> entries, String key, Object value) {
        entries.put(key, Leaf.written(value));
    }
}
