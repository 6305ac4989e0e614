package icequill.render.view;

import icequill.agreement.Earning;
import icequill.agreement.Installment;
import icequill.agreement.PlannedVisit;
import icequill.agreement.Tier;
import icequill.document.RefundClause;
import icequill.document.ServiceAgreement;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A maintenance agreement as texts, ready for {@code service-agreement.ftlh}. */
public record ServiceAgreementView(ServiceAgreement agreement, Sentences sentences) {

    private static final String DAY = "day";

    public static Map<String, Object> of(ServiceAgreement agreement) {
        String country = agreement.shop().address().country();
        return new ServiceAgreementView(agreement, Sentences.of(agreement.language(), country)).model();
    }

    private Map<String, Object> model() {
        Title title = new Title(sentences.word("agreement.title"), Optional.of(agreement.number()));
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(agreement, title, sentences).model(agreement.billTo(), facts()));
        PlanYearView years = new PlanYearView(sentences);
        Tier tier = agreement.tier();
        model.put("draft", agreement.accepted().isEmpty());
        model.put("currency", agreement.yearPrice().getCurrency().getCurrencyCode());
        model.put("summary", summary());
        model.put("machines",
                agreement.machines().stream().map(machine -> new MachineName(machine, sentences).text()).toList());
        model.put("calendar", agreement.calendar().visits().stream().map(this::visit).toList());
        model.put("work", agreement.work().stream().map(years::visit).toList());
        model.put("payments", agreement.payments().stream().map(this::payment).toList());
        model.put("calls", new CallChargesView(agreement.calls(), sentences).model(List.of(tier)));
        model.put("callTerms", callTerms(tier));
        model.put("excluded", years.sentencesOf(tier.exclusions()));
        model.put("changes", agreement.changes().stream().map(this::change).toList());
        model.put("terms", terms());
        return model;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("agreement.date", sentences.formats().day(agreement.date()))
                .add("visit.site", agreement.where().site()).add("fact.store", agreement.where().storeNumber())
                .add("fact.vendor", agreement.vendorNumber())
                .add("fact.purchase-order", agreement.purchaseOrder())
                .add("agreement.accepted", agreement.accepted().map(accepted -> sentences.formats()
                        .day(accepted.date()) + (accepted.paper().isEmpty() ? "" : ", " + accepted.paper())))
                .rows();
    }

    /** The whole agreement on one page: price, visits, response, exclusions, how to leave. */
    private List<Map<String, String>> summary() {
        Details details = new Details(sentences);
        details.add("agreement.plan", Sentences.capitalized(sentences.in(agreement.tier().name())));
        details.add("agreement.runs", sentences.say(Phrase.of("agreement.from-to",
                new Fact.Day(agreement.terms().term().start()), new Fact.Day(agreement.terms().term().lastDay()))));
        details.add("agreement.price", sentences.say(Phrase.of("agreement.price-of-year",
                new Fact.Amount(agreement.yearPrice()))));
        details.add("agreement.figured", sentences.how(agreement.how(), agreement.yearPrice()));
        details.add("agreement.paid", sentences.word("billing." + MaintenanceQuoteView.billingKey(
                agreement.billing())));
        details.add("agreement.visits", sentences.say(Phrase.of("agreement.visits-count",
                Fact.number(agreement.calendar().visits().size(), "visit"),
                Fact.number(agreement.calendar().visits().stream()
                        .filter(visit -> visit.slot().scope().isFullClean()).count(), ""))));
        details.add("agreement.leave", leave());
        return details.rows();
    }

    private String leave() {
        return sentences.say(Phrase.of("agreement.leave-end", new Fact.Day(agreement.terms().lastDayToRefuse()),
                Fact.number(agreement.terms().refuseDays(), DAY))) + " "
                + sentences.say(Phrase.of("agreement.leave-within", Fact.number(agreement.cancelDays(), DAY)));
    }

    private Map<String, String> visit(PlannedVisit visit) {
        return Map.of("day", sentences.formats().day(visit.date()), "what",
                Sentences.capitalized(sentences.in(visit.slot().name())) + ": "
                        + sentences.in(visit.slot().scope().name()),
                "filter", sentences.word(visit.filtersDue() ? "answer.yes" : "answer.no"), "note",
                visit.moved().map(sentences::say).map(Sentences::capitalized).orElse(""));
    }

    private Map<String, String> payment(Installment payment) {
        return Map.of("number", String.valueOf(payment.number()), "due", sentences.formats().day(payment.due()),
                "amount", sentences.formats().amount(payment.amount()));
    }

    private List<String> callTerms(Tier tier) {
        List<String> terms = new ArrayList<>();
        terms.add(tier.included().number() == 0
                ? sentences.word("agreement.no-calls-included")
                : sentences.say(Phrase.of("choice.included-calls", Fact.number(tier.included().number(), "call"))));
        tier.callTerms().forEach(off -> terms.add(sentences.say(off)));
        return terms;
    }

    private Map<String, Object> change(ServiceAgreement.Change change) {
        List<String> parts = Stream.concat(
                change.added().stream().map(machine -> sentences.word("agreement.added", machine)),
                change.removed().stream().map(machine -> sentences.word("agreement.removed", machine))).toList();
        return Map.of("from", sentences.formats().day(change.price().from()), "what",
                Sentences.capitalized(String.join("; ", parts)), "how",
                sentences.how(change.price().how(), change.price().amount()), "notes", notes(change), "amount",
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
        terms.add(sentences.say(Phrase.of("agreement.renews", Fact.number(agreement.terms().renewalMonths(), "month"),
                new Fact.Day(agreement.terms().lastDayToRefuse()), new Fact.Part(agreement.tier().cap()))));
        terms.add(sentences.word("agreement.owner-change"));
        terms.add(sentences.word("agreement.machine-change"));
        terms.add(sentences.word("agreement.safety"));
        agreement.remarks().forEach(remark -> terms.add(Sentences.capitalized(sentences.say(remark))));
        return terms;
    }
}
