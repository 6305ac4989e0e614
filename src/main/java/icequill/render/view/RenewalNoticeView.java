package icequill.render.view;

import icequill.agreement.GoingOn;
import icequill.agreement.Installment;
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
     * @param span what the prices are for
     * @param late whether the notice comes too late to renew by
     * @param lastDay to refuse
     * @param how the new price is figured
     * @param refuse the ways
     */
    record Renewal(String currency, String span, boolean late, List<String> says, String lastDay, List<Price> prices,
            List<SiteRow> sites, String how,
            List<String> refuse, List<String> machines, List<String> laws)
            implements
            Texts {}

    record Price(String label, String amount) implements Texts {}

    record SiteRow(String name, String old, String now, String how) implements Texts {}

    private Page page() {
        boolean late = notice.late().isPresent();
        LetterView.Title title = new LetterView.Title(sentences.word(late ? "renewal.late-title" : "renewal.title"),
                Optional.of(notice.agreement()));
        return Page.of(new LetterView(notice, title, sentences).letter(notice.billTo(), false, facts()),
                new Renewal(notice.price().price().getCurrency().getCurrencyCode(),
                        sentences.word(new PriceSpan(notice.terms().term()).key("renewal.price")), late,
                        notice.late().map(this::saysLate).orElseGet(this::says),
                        sentences.formats().day(notice.terms().lastDayToRefuse()), prices(), sites(),
                        sentences.how(notice.price().how(), notice.price().price()), refuse(),
                        notice.machines().stream().map(machine -> new MachineName(machine, sentences).text())
                                .toList(),
                        notice.laws().stream().map(sentences::say).toList()));
    }

    private List<String> says() {
        Fact number = new Fact.Text(notice.agreement());
        Fact lastDay = new Fact.Day(notice.terms().term().lastDay());
        Fact begins = new Fact.Day(notice.next().start());
        Fact days = Fact.number(notice.terms().refuseDays(), "day");
        return switch (notice.terms().goingOn()) {
        case BY_TERM -> List.of(willRenew(number, lastDay, begins), sentences.say(Phrase.of("renewal.clause", days)));
        case NEXT_SEASON -> List.of(willRenew(number, lastDay, begins),
                sentences.say(Phrase.of("renewal.clause-season", days, begins)));
        case BY_MONTH -> List.of(sentences.say(Phrase.of("renewal.by-month", number, lastDay, begins, days)),
                sentences.say(Phrase.of("renewal.clause-month", days)));
        };
    }

    private String willRenew(Fact number, Fact lastDay, Fact begins) {
        return sentences.say(Phrase.of("renewal.will-renew", number, lastDay, begins,
                Fact.number(notice.next().months(), "month")));
    }

    private boolean isByMonth() {
        return notice.terms().goingOn() == GoingOn.BY_MONTH;
    }

    /** Without a claim that the agreement renews. */
    private List<String> saysLate(String reason) {
        return List.of(
                sentences.say(Phrase.of("renewal.late-ends", new Fact.Text(notice.agreement()),
                        new Fact.Day(notice.terms().term().lastDay()))),
                sentences.say(Phrase.of("renewal.late-why", new Fact.Text(reason))),
                sentences.say(isByMonth()
                        ? Phrase.of("renewal.late-offer-month", new Fact.Day(notice.next().start()))
                        : Phrase.of("renewal.late-offer", new Fact.Day(notice.next().start()),
                                Fact.number(notice.next().months(), "month"))));
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("renewal.date", sentences.formats().day(notice.date()))
                .add("agreement.number", notice.agreement())
                .add("agreement.plan", Sentences.capitalized(sentences.in(notice.plan())))
                .add("visit.site", notice.sites().isEmpty()
                        ? notice.where().site()
                        : sentences.say(Phrase.of("agreement.sites-count", Fact.number(notice.sites().size(), ""))))
                .add("fact.store", notice.sites().isEmpty() ? notice.where().storeNumber() : Optional.empty())
                .add("fact.vendor", notice.vendorNumber()).rows();
    }

    private List<Price> prices() {
        List<Price> prices = new ArrayList<>(
                List.of(price("renewal.old", sentences.formats().amount(notice.price().old())),
                        price(notice.late().isPresent() ? "renewal.late-new" : "renewal.new",
                                sentences.formats().amount(notice.price().price())),
                        price("renewal.difference", sentences.formats().amount(notice.price().difference()))));
        if (isByMonth()) {
            prices.add(price("renewal.months", PriceSpan.counted(
                    notice.months().stream().map(Installment::amount).map(sentences.formats()::amount).toList())));
        }
        return List.copyOf(prices);
    }

    private List<SiteRow> sites() {
        return notice.sites().stream().map(site -> new SiteRow(
                site.where().storeNumber().map(store -> site.where().site() + ", " + store)
                        .orElse(site.where().site()),
                sentences.formats().amount(site.price().old()), sentences.formats().amount(site.price().price()),
                sentences.how(site.price().how(), site.price().price()))).toList();
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
                        sentences.word(isByMonth() ? "renewal.end-text" : "renewal.refuse-text", notice.agreement()));
    }
}
