package icequill.web.visit;

import icequill.office.asking.KnownVisits;
import icequill.office.register.DraftOffice;
import icequill.office.register.KeptDraft;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps what somebody began to type of a visit, and throws it away. */
public final class VisitDraft implements Page, FormPage {

    /** The field that holds its id, on the page and in its address. */
    static final String ID = "draft";
    private static final String FORM = "visit";

    /** Keeps it, and shows the page with it. */
    @Override
    public Answer answer(Asked asked) {
        Map<String, List<String>> fields = new LinkedHashMap<>(asked.fields());
        fields.keySet().removeAll(List.of("key", ID));
        String visit = asked.part("visit");
        Validated<String> site = visit.isEmpty()
                ? Validated.valid(asked.part("site"))
                : new KnownVisits(asked.book()).find(visit).map(known -> known.site());
        return Answer.of(site.then(found -> new DraftOffice(asked.book()).keep(
                new DraftOffice.Begun(asked.text(ID).orElse(""), FORM, found, visit), asked.formKey().orElse(""),
                fields)),
                begun -> new Answer.Gone(address(begun.site(), begun.subject()) + "?" + ID + "=" + begun.id()));
    }

    /** Throws one away. */
    @Override
    public Validated<String> done(Asked asked) {
        DraftOffice office = new DraftOffice(asked.book());
        Optional<KeptDraft> draft = office.find(asked.part(ID)).filter(found -> found.form().equals(FORM));
        return draft.isEmpty()
                ? Validated.valid("/visits")
                : office.discard(draft.get().id()).map(gone -> address(draft.get().site(), draft.get().subject()));
    }

    /** Where a visit is typed: a new one of a site, or one that the book knows. */
    static String address(String site, String visit) {
        return visit.isEmpty() ? Paths.site(site) + "/visit" : Paths.visit(visit) + "/change";
    }

    /** What was typed into a page that is opened to go on with it. */
    static Optional<KeptDraft> of(Asked asked) {
        return asked.text(ID).flatMap(id -> new DraftOffice(asked.book()).find(id))
                .filter(draft -> draft.form().equals(FORM) && draft.subject().equals(asked.part("visit")));
    }

    /** All of visits that somebody began and did not store, the last kept first. */
    static List<Offered> all(Asked asked) {
        return new DraftOffice(asked.book()).all(FORM).stream().map(Offered::of).toList();
    }

    /**
     * One that can be gone on with.
     *
     * @param address where it goes on
     */
    public record Offered(KeptDraft draft, String address) {

        private static Offered of(KeptDraft draft) {
            return new Offered(draft,
                    VisitDraft.address(draft.site(), draft.subject()) + "?" + ID + "=" + draft.id());
        }

        boolean isOf(String site, String visit) {
            return draft.site().equals(site) && draft.subject().equals(visit);
        }
    }
}
