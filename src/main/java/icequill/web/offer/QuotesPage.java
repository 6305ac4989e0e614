package icequill.web.offer;

import icequill.answer.quote.QuoteList;
import icequill.answer.register.SiteList;
import icequill.explain.ConstantKey;
import icequill.ledger.papers.PaperKind;
import icequill.office.care.AskedPeriod;
import icequill.office.care.PaperWish;
import icequill.office.quoting.QuoteOffice;
import icequill.office.register.RegisterLists;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.List;
import java.util.Optional;

/** Quotes that were issued, and the sites to make one for. */
public final class QuotesPage implements Page {

    private static final int MOST = 100;
    private static final List<String> KINDS = List.of(ConstantKey.of(PaperKind.MAINTENANCE_QUOTE),
            ConstantKey.of(PaperKind.REPAIR_QUOTE));

    /**
     * What its page shows.
     *
     * @param find what is looked for among sites and quotes
     * @param sites none where nothing is looked for
     * @param begun what somebody began to type and did not issue
     * @param isCut whether there may be more quotes that fit
     */
    public record Shown(String find, String month, List<SiteList.Row> sites, List<QuoteDraft.Offered> begun,
            QuoteList list, boolean isCut) {}

    @Override
    public Answer answer(Asked asked) {
        String find = asked.text("find").orElse("");
        PaperWish wish = new PaperWish(find,
                new AskedPeriod(asked.month(), Optional.empty(), Optional.empty()), KINDS, Optional.empty(),
                Optional.empty(), Optional.empty(), MOST);
        Validated<QuoteList> quotes = QuoteOffice.of(asked.book()).issued(wish, asked.reader().today());
        return Answer.of(quotes, list -> new Answer.Shown("quotes", new Shown(find, asked.text("month").orElse(""),
                sites(asked, find), QuoteDraft.all(asked), list, list.papers().size() == MOST), list));
    }

    private static List<SiteList.Row> sites(Asked asked, String find) {
        return find.isEmpty()
                ? List.of()
                : RegisterLists.of(asked.book()).sites(find).found().map(SiteList::sites).orElse(List.of());
    }
}
