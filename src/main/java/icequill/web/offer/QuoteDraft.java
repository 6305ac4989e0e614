package icequill.web.offer;

import icequill.office.register.DraftOffice;
import icequill.office.register.KeptDraft;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.PageDraft;
import java.util.List;
import java.util.Optional;

/**
 * Keeps what is typed of a quote until it is issued or thrown away.
 *
 * @param entry the page on which it is typed
 */
public record QuoteDraft(FormPage entry) implements Page, FormPage {

    private static final String FORM = "quote";
    /** Who goes on with it asks anew for what only the owner sees. */
    private static final List<String> NOT_KEPT = List.of("owner");

    /** Keeps it, and shows the page with it. */
    @Override
    public Answer answer(Asked asked) {
        return of(asked).keep(QuoteDraft::address, NOT_KEPT, QuoteForm.DAYS, entry::again);
    }

    /** Throws one away. */
    @Override
    public Validated<String> done(Asked asked) {
        DraftOffice office = new DraftOffice(asked.book());
        Optional<KeptDraft> draft = office.find(asked.part(PageDraft.ID)).filter(found -> found.form().equals(FORM));
        return draft.isEmpty() ? Validated.valid("/quotes") : office.discard(draft.get().id()).map(gone -> "/quotes");
    }

    private static String address(Optional<String> site) {
        return site.map(QuotePaths::entry).orElse(QuotePaths.NEW);
    }

    private static Optional<String> site(Asked asked) {
        return Optional.of(asked.part("site")).filter(site -> !site.isEmpty());
    }

    /** That of a page. */
    static PageDraft of(Asked asked) {
        return new PageDraft(asked, FORM, site(asked), "");
    }

    /** All quotes that somebody began and did not issue, the last kept first. */
    public static List<Offered> all(Asked asked) {
        return new DraftOffice(asked.book()).all(FORM).stream()
                .map(draft -> new Offered(draft, address(draft.site()) + "?" + PageDraft.ID + "=" + draft.id()))
                .toList();
    }

    /**
     * One that can be gone on with.
     *
     * @param address where it goes on
     */
    public record Offered(KeptDraft draft, String address) {}
}
