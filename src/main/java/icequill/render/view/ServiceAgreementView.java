package icequill.render.view;

import icequill.agreement.Earning;
import icequill.agreement.Installment;
import icequill.agreement.PlannedVisit;
import icequill.agreement.RenewalTerms;
import icequill.agreement.Tier;
import icequill.document.CallCharge;
import icequill.document.ServiceAgreement;
import icequill.document.ServiceAgreement.CareAt;
import icequill.document.ServiceAgreement.RefundClause;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A maintenance agreement as texts, ready for {@code service-agreement.ftlh}. */
public record ServiceAgreementView(ServiceAgreement agreement, Sentences sentences) {

    private static final String DAY = "day";

    public static Page of(ServiceAgreement agreement) {
        String country = agreement.shop().address().country();
        return new ServiceAgreementView(agreement, Sentences.of(agreement.language(), country)).page();
    }

    /**
     * What is agreed.
     *
     * @param summary the whole agreement on one page: price, visits, response, exclusions, how to leave
     * @param isOverSeveral whether it is over several sites
     * @param sitePrice what the price of each is for, in words
     * @param sites at least one
     * @param changes of the machines; may be empty
     */
    record Agreed(String currency, List<Details.Row> summary, boolean isOverSeveral, String sitePrice,
            List<Place> sites, List<CallsAt> calls, List<Visit> calendar, List<Payment> payments,
            List<String> callTerms,
            List<String> excluded,
            List<Change> changes, List<String> terms)
            implements
            Texts {}

    /**
     * A site.
     *
     * @param address may be empty where there is one site
     * @param visits how many
     * @param days when it comes in or goes; may be empty
     */
    record Place(String name, String address, List<String> machines, String visits, String days, String price,
            String how, List<PlanYearView.Visit> work)
            implements
            Texts {}

    /**
     * What calls cost at some of the sites.
     *
     * @param at which; empty where it is all of them
     */
    record CallsAt(String at, CallChargesView.Calls calls) implements Texts {}

    /**
     * A planned visit.
     *
     * @param site where there are several; empty else
     * @param filter whether its filters are due, in words
     * @param note why it is on another day than it would be; may be empty
     */
    record Visit(String day, String site, String what, String filter, String note) implements Texts {}

    record Payment(String number, String due, String amount) implements Texts {}

    record Change(String from, String what, String how, List<String> notes, String amount) implements Texts {}

    private Page page() {
        LetterView.Title title = new LetterView.Title(sentences.word("agreement.title"),
                Optional.of(agreement.number()));
        return Page.of(new LetterView(agreement, title, sentences).letter(agreement.billTo(),
                agreement.accepted().isEmpty(), facts()), agreed());
    }

    private Agreed agreed() {
        PlanYearView years = new PlanYearView(sentences, span());
        Tier tier = agreement.tier();
        return new Agreed(agreement.yearPrice().getCurrency().getCurrencyCode(), summary(),
                agreement.isOverSeveralSites(), sentences.word(span().key("agreement.site-price")),
                agreement.sites().stream().map(site -> place(site, years)).toList(),
                calls(),
                agreement.sites().stream().flatMap(site -> site.calendar().visits().stream()
                        .map(visit -> Map.entry(visit.date(), visit(site, visit))))
                        .sorted(Map.Entry.comparingByKey()).map(Map.Entry::getValue).toList(),
                agreement.payments().stream().map(this::payment).toList(), callTerms(tier),
                years.sentencesOf(tier.exclusions()),
                agreement.sites().stream().flatMap(site -> site.changes().stream()
                        .map(change -> Map.entry(change.price().from(), change(site, change))))
                        .sorted(Map.Entry.comparingByKey()).map(Map.Entry::getValue).toList(),
                terms());
    }

    private Place place(CareAt site, PlanYearView years) {
        return new Place(name(site), String.join(", ", site.where().address().lines()),
                site.machines().stream().map(machine -> new MachineName(machine, sentences).text()).toList(),
                String.valueOf(site.calendar().visits().size()), days(site),
                sentences.formats().amount(site.yearPrice()), sentences.how(site.how(), site.yearPrice()),
                site.work().stream().map(years::visit).toList());
    }

    /** Sites at which calls cost the same stand together. */
    private List<CallsAt> calls() {
        Map<List<CallCharge>, List<String>> alike = new LinkedHashMap<>();
        agreement.sites().forEach(site -> alike.computeIfAbsent(site.calls(), calls -> new ArrayList<>())
                .add(name(site)));
        return alike.entrySet().stream().map(entry -> new CallsAt(
                alike.size() == 1 ? "" : String.join("; ", entry.getValue()),
                new CallChargesView(entry.getKey(), sentences).calls(List.of(agreement.tier())))).toList();
    }

    private static String name(CareAt site) {
        return site.where().storeNumber().map(store -> site.where().site() + ", " + store)
                .orElse(site.where().site());
    }

    private String days(CareAt site) {
        return Stream.concat(site.from().map(day -> Phrase.of("agreement.site-from", new Fact.Day(day))).stream(),
                site.until().map(day -> Phrase.of("agreement.site-until", new Fact.Day(day))).stream())
                .map(sentences::say).collect(Collectors.joining("; "));
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("agreement.date", sentences.formats().day(agreement.date()))
                .add("visit.site", agreement.isOverSeveralSites()
                        ? sentences.say(Phrase.of("agreement.sites-count",
                                Fact.number(agreement.sites().size(), "")))
                        : agreement.sites().getFirst().where().site())
                .add("fact.store", Optional.of(agreement.sites().getFirst()).filter(
                        site -> !agreement.isOverSeveralSites()).flatMap(site -> site.where().storeNumber()))
                .add("fact.vendor", agreement.vendorNumber())
                .add("fact.purchase-order", agreement.purchaseOrder())
                .add("agreement.accepted", agreement.accepted().map(accepted -> sentences.formats()
                        .day(accepted.date()) + (accepted.paper().isEmpty() ? "" : ", " + accepted.paper())))
                .rows();
    }

    private List<Details.Row> summary() {
        Details details = new Details(sentences);
        details.add("agreement.plan", Sentences.capitalized(sentences.in(agreement.tier().name())));
        details.add("agreement.runs", sentences.say(Phrase.of("agreement.from-to",
                new Fact.Day(agreement.firstDay()), new Fact.Day(agreement.terms().term().lastDay()))));
        details.add("agreement.rest", agreement.rest().map(rest -> sentences.say(Phrase.of("agreement.rest-of",
                new Fact.Text(rest.of()), new Fact.Day(rest.from()), new Fact.Amount(agreement.termPrice())))));
        details.add("agreement.price", sentences.say(Phrase.of(span().key("agreement.price-of-year"),
                new Fact.Amount(agreement.yearPrice()))));
        details.add("agreement.figured", sentences.how(agreement.how(), agreement.yearPrice()));
        details.add("agreement.paid", sentences.word("billing." + span().billing(agreement.billing())));
        details.add("agreement.visits", sentences.say(Phrase.of("agreement.visits-count",
                Fact.number(agreement.visits().size(), "visit"),
                Fact.number(agreement.visits().stream()
                        .filter(visit -> visit.slot().scope().isFullClean()).count(), ""))));
        details.add("agreement.leave", leave());
        return details.rows();
    }

    private PriceSpan span() {
        return new PriceSpan(agreement.terms().term());
    }

    private String renews() {
        RenewalTerms terms = agreement.terms();
        Fact months = Fact.number(terms.renewalMonths(), "month");
        Fact lastDay = new Fact.Day(terms.lastDayToRefuse());
        Fact cap = new Fact.Part(agreement.tier().cap());
        return sentences.say(switch (terms.goingOn()) {
        case BY_TERM -> Phrase.of("agreement.renews", months, lastDay, cap);
        case NEXT_SEASON -> Phrase.of("agreement.renews-season", months, lastDay, cap, new Fact.Day(terms.begins()));
        case BY_MONTH -> Phrase.of("agreement.renews-by-month", new Fact.Day(terms.begins()),
                Fact.number(terms.refuseDays(), DAY), cap);
        });
    }

    private String leave() {
        return sentences.say(Phrase.of("agreement.leave-" + switch (agreement.terms().goingOn()) {
        case BY_TERM -> "end";
        case NEXT_SEASON -> "season";
        case BY_MONTH -> "month";
        }, new Fact.Day(agreement.terms().lastDayToRefuse()),
                Fact.number(agreement.terms().refuseDays(), DAY))) + " "
                + sentences.say(Phrase.of("agreement.leave-within", Fact.number(agreement.cancelDays(), DAY)));
    }

    private Visit visit(CareAt site, PlannedVisit visit) {
        return new Visit(sentences.formats().day(visit.date()), agreement.isOverSeveralSites() ? name(site) : "",
                Sentences.capitalized(sentences.in(visit.slot().name())) + ": "
                        + sentences.in(visit.slot().scope().name()),
                sentences.word(visit.filtersDue() ? "answer.yes" : "answer.no"),
                visit.moved().map(sentences::say).map(Sentences::capitalized).orElse(""));
    }

    private Payment payment(Installment payment) {
        return new Payment(String.valueOf(payment.number()), sentences.formats().day(payment.due()),
                sentences.formats().amount(payment.amount()));
    }

    private List<String> callTerms(Tier tier) {
        List<String> terms = new ArrayList<>();
        terms.add(tier.included().number() == 0
                ? sentences.word("agreement.no-calls-included")
                : sentences.say(Phrase.of("choice.included-calls", Fact.number(tier.included().number(), "call"))));
        tier.callTerms().forEach(off -> terms.add(sentences.say(off)));
        return List.copyOf(terms);
    }

    private Change change(CareAt site, ServiceAgreement.Change change) {
        Stream<String> where = agreement.isOverSeveralSites() ? Stream.of(name(site)) : Stream.of();
        Stream<String> what = change.added().isEmpty() && change.removed().isEmpty()
                ? Stream.of(sentences.word("agreement.changed-elsewhere"))
                : Stream.concat(
                        change.added().stream().map(machine -> sentences.word("agreement.added", machine)),
                        change.removed().stream().map(machine -> sentences.word("agreement.removed", machine)));
        List<String> parts = Stream.concat(where, what).toList();
        return new Change(sentences.formats().day(change.price().from()),
                Sentences.capitalized(String.join("; ", parts)),
                sentences.how(change.price().how(), change.price().amount()), notes(change),
                sentences.formats().amount(change.price().amount()));
    }

    /** The minutes that a change was priced by, and what of it is given back by credit notes. */
    private List<String> notes(ServiceAgreement.Change change) {
        return Stream.concat(change.minutes().stream(), change.givenBack().stream()
                .map(back -> Phrase.of("agreement.given-back", new Fact.Amount(back.amount()),
                        Fact.number(back.payment(), ""))))
                .map(sentences::say).map(Sentences::capitalized).toList();
    }

    private String cancel() {
        String may = sentences.say(Phrase.of("agreement.cancel", Fact.number(agreement.cancelDays(), DAY)));
        return may + " "
                + agreement.refund().map(this::refund).orElseGet(() -> sentences.word("agreement.refund-none"));
    }

    private String refund(RefundClause clause) {
        String by = clause.earning() == Earning.DAYS ? "days" : "visits";
        return sentences.word("agreement.refund-" + by) + " "
                + sentences.say(Phrase.of("agreement.refund-example-" + by, new Fact.Day(clause.example()),
                        new Fact.Amount(clause.backThen().amount())))
                + " " + Sentences.capitalized(sentences.how(clause.backThen().how(), clause.backThen().amount())) + ".";
    }

    private List<String> terms() {
        List<String> terms = new ArrayList<>();
        terms.add(sentences.word("agreement.tax"));
        terms.add(sentences.word("agreement.missed-ours"));
        terms.add(sentences.word("agreement.missed-yours"));
        terms.add(cancel());
        terms.add(renews());
        terms.add(sentences.word("agreement.owner-change"));
        terms.add(sentences.word("agreement.machine-change"));
        terms.add(sentences.word("agreement.safety"));
        agreement.remarks().forEach(remark -> terms.add(Sentences.capitalized(sentences.say(remark))));
        return List.copyOf(terms);
    }
}
