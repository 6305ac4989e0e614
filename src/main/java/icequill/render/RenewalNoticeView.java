package icequill.render;

import icequill.document.RenewalNotice;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A renewal notice as texts, ready for {@code renewal-notice.ftlh}. */
record RenewalNoticeView(RenewalNotice notice, Sentences sentences) {

    static Map<String, Object> of(RenewalNotice notice) {
        String country = notice.shop().address().country();
        return new RenewalNoticeView(notice, Sentences.of(notice.language(), country)).model();
    }

    private Map<String, Object> model() {
        String title = sentences.word("renewal.title", notice.agreement());
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(notice, title, sentences).model(notice.billTo(), facts()));
        model.put("draft", false);
        model.put("currency", notice.price().price().getCurrency().getCurrencyCode());
        model.put("says", List.of(
                sentences.say(Phrase.of("renewal.will-renew", new Fact.Text(notice.agreement()),
                        new Fact.Day(notice.terms().term().lastDay()), new Fact.Day(notice.next().start()),
                        Fact.number(notice.next().months(), "month"))),
                sentences.say(Phrase.of("renewal.clause", Fact.number(notice.terms().refuseDays(), "day")))));
        model.put("lastDay", sentences.formats().day(notice.terms().lastDayToRefuse()));
        model.put("prices", prices());
        model.put("how", sentences.how(notice.price().how(), notice.price().price()));
        model.put("refuse", refuse());
        model.put("machines",
                notice.machines().stream().map(machine -> new MachineName(machine, sentences).text()).toList());
        model.put("laws", notice.laws().stream().map(sentences::say).toList());
        return model;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("renewal.date", sentences.formats().day(notice.date()))
                .add("agreement.number", notice.agreement())
                .add("agreement.plan", Sentences.capitalized(sentences.in(notice.plan())))
                .add("visit.site", notice.where().site()).add("fact.store", notice.where().storeNumber())
                .add("fact.vendor", notice.vendorNumber()).rows();
    }

    private List<Map<String, String>> prices() {
        return List.of(price("renewal.old", sentences.formats().amount(notice.price().old())),
                price("renewal.new", sentences.formats().amount(notice.price().price())),
                price("renewal.difference", sentences.formats().amount(notice.price().difference())));
    }

    private Map<String, String> price(String key, String amount) {
        return Map.of("label", sentences.word(key), "amount", amount);
    }

    /** The exact ways and address. */
    private List<String> refuse() {
        List<String> address = new ArrayList<>(List.of(notice.shop().name()));
        address.addAll(notice.shop().address().lines());
        return List.of(sentences.word("renewal.by-mail", String.join(", ", address)),
                sentences.word("renewal.by-email", notice.shop().email(), notice.agreement()),
                sentences.word("renewal.refuse-text", notice.agreement()));
    }
}
