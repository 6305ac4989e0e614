package icequill.web.visit;

import icequill.office.asking.KnownVisit;
import icequill.office.asking.KnownVisits;
import icequill.office.register.DraftOffice;
import icequill.office.register.KeptDraft;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.PageDraft;
import icequill.web.page.Paths;
import java.util.List;
import java.util.Optional;

/**
 * Keeps what somebody began to type of a visit, and throws it away.
 *
 * @param entry the page on which it is typed
 */
public record VisitDraft(FormPage entry) implements Page, FormPage {

    private static final String FORM = "visit";

    /** Keeps it, and shows the page with it. */
    @Override
    public Answer answer(Asked asked) {
        String visit = asked.part("visit");
        Validated<String> site = visit.isEmpty()
                ? Validated.valid(asked.part("site"))
                : new KnownVisits(asked.book()).find(visit).map(KnownVisit::site);
        return Answer.of(site, found -> of(asked, found).keep(
                now -> address(now.orElse(""), visit), List.of(), VisitForm.DAYS, entry::again));
    }

    /** Throws one away. */
    @Override
    public Validated<String> done(Asked asked) {
        DraftOffice office = new DraftOffice(asked.book());
        Optional<KeptDraft> draft = office.find(asked.part(PageDraft.ID)).filter(found -> found.form().equals(FORM));
        return draft.isEmpty()
                ? Validated.valid("/visits")
                : office.discard(draft.get().id()).map(gone -> address(draft.get()));
    }

    /** Where a visit is typed: a new one of a site, or one that the book knows. */
    static String address(String site, String visit) {
        return visit.isEmpty() ? Paths.site(site) + "/visit" : Paths.visit(visit) + "/change";
    }

    private static String address(KeptDraft draft) {
        return address(draft.site().orElse(""), draft.subject());
    }

    /** That of a page. */
    static PageDraft of(Asked asked, String site) {
        return new PageDraft(asked, FORM, Optional.of(site), asked.part("visit"));
    }

    /** All of visits that somebody began and did not store, the last kept first. */
    public static List<Offered> all(Asked asked) {
        return new DraftOffice(asked.book()).all(FORM).stream().map(Offered::of).toList();
    }

    /**
     * One that can be gone on with.
     *
     * @param address where it goes on
     */
    public record Offered(KeptDraft draft, String address) {

        private static Offered of(KeptDraft draft) {
            return new Offered(draft, VisitDraft.address(draft) + "?" + PageDraft.ID + "=" + draft.id());
        }

        boolean isOf(String site, String visit) {
            return draft.site().filter(site::equals).isPresent() && draft.subject().equals(visit);
        }
    }
}
