package icequill.render.view;

import icequill.document.RenewalNotice;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A renewal notice as texts, ready for {@code renewal-notice.ftlh}. */
public record RenewalNoticeView(RenewalNotice notice, Sentences sentences) {

    public static Page of(RenewalNotice notice) {
        String country = notice.shop().address().country();
        return new RenewalNoticeView(notice, Sentences.of(notice.language(), country)).page();
    }

    /**
     * What happens, and how to refuse it.
     *
     * @param late whether the notice comes too late to renew by
     * @param lastDay to refuse
     * @param how the new price is figured
     * @param refuse the ways
     */
    record Renewal(String currency, boolean late, List<String> says, String lastDay, List<Price> prices, String how,
            List<String> refuse, List<String> machines, List<String> laws)
            implements
            Texts {}

    record Price(String label, String amount) implements Texts {}

    private Page page() {
        boolean late = notice.late().isPresent();
        Title title = new Title(sentences.word(late ? "renewal.late-title" : "renewal.title"),
                Optional.of(notice.agreement()));
        return Page.of(new LetterView(notice, title, sentences).letter(notice.billTo(), false, facts()),
                new Renewal(notice.price().price().getCurrency().getCurrencyCode(), late,
                        notice.late().map(this::saysLate).orElseGet(this::says),
                        sentences.formats().day(notice.terms().lastDayToRefuse()), prices(),
                        sentences.how(notice.price().how(), notice.price().price()), refuse(),
                        notice.machines().stream().map(machine -> new MachineName(machine, sentences).text())
                                .toList(),
                        notice.laws().stream().map(sentences::say).toList()));
    }

    private List<String> says() {
        return List.of(
                sentences.say(Phrase.of("renewal.will-renew", new Fact.Text(notice.agreement()),
                        new Fact.Day(notice.terms().term().lastDay()), new Fact.Day(notice.next().start()),
                        Fact.number(notice.next().months(), "month"))),
                sentences.say(Phrase.of("renewal.clause", Fact.number(notice.terms().refuseDays(), "day"))));
    }

    /** Without a claim that the agreement renews. */
    private List<String> saysLate(String reason) {
        return List.of(
                sentences.say(Phrase.of("renewal.late-ends", new Fact.Text(notice.agreement()),
                        new Fact.Day(notice.terms().term().lastDay()))),
                sentences.say(Phrase.of("renewal.late-why", new Fact.Text(reason))),
                sentences.say(Phrase.of("renewal.late-offer", new Fact.Day(notice.next().start()),
                        Fact.number(notice.next().months(), "month"))));
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("renewal.date", sentences.formats().day(notice.date()))
                .add("agreement.number", notice.agreement())
                .add("agreement.plan", Sentences.capitalized(sentences.in(notice.plan())))
                .add("visit.site", notice.where().site()).add("fact.store", notice.where().storeNumber())
                .add("fact.vendor", notice.vendorNumber()).rows();
    }

    private List<Price> prices() {
        return List.of(price("renewal.old", sentences.formats().amount(notice.price().old())),
                price(notice.late().isPresent() ? "renewal.late-new" : "renewal.new",
                        sentences.formats().amount(notice.price().price())),
                price("renewal.difference", sentences.formats().amount(notice.price().difference())));
    }

    private Price price(String key, String amount) {
        return new Price(sentences.word(key), amount);
    }

    /** The exact ways and address. */
    private List<String> refuse() {
        List<String> address = new ArrayList<>(List.of(notice.shop().name()));
        address.addAll(notice.shop().address().lines());
        String mail = String.join(", ", address);
        String byEmail = sentences.word("renewal.by-email", notice.shop().email(), notice.agreement());
        return notice.late().isPresent()
                ? List.of(sentences.word("renewal.late-by-mail", mail), byEmail)
                : List.of(sentences.word("renewal.by-mail", mail), byEmail,
                        sentences.word("renewal.refuse-text", notice.agreement()));
    }
}
