package icequill.web.offer;

import icequill.office.register.DraftOffice;
import icequill.office.register.KeptDraft;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps what is typed of a quote for a site of the book until it is issued or thrown away. */
public final class QuoteDraft implements Page, FormPage {

    /** The field that holds its id, on the page and in its address. */
    static final String ID = "draft";
    private static final String FORM = "quote";
    /** Who goes on with it asks anew for what only the owner sees. */
    private static final List<String> NOT_KEPT = List.of("key", ID, "owner");

    /** Keeps it, and shows the page with it. */
    @Override
    public Answer answer(Asked asked) {
        Map<String, List<String>> fields = new LinkedHashMap<>(asked.fields());
        fields.keySet().removeAll(NOT_KEPT);
        DraftOffice.Begun begun = new DraftOffice.Begun(asked.text(ID).orElse(""), FORM, asked.part("site"), "");
        return Answer.of(new DraftOffice(asked.book()).keep(begun, asked.formKey().orElse(""), fields),
                kept -> new Answer.Gone(address(kept.site(), kept.id())));
    }

    /** Throws one away. */
    @Override
    public Validated<String> done(Asked asked) {
        DraftOffice office = new DraftOffice(asked.book());
        Optional<KeptDraft> draft = office.find(asked.part(ID)).filter(found -> found.form().equals(FORM));
        return draft.isEmpty() ? Validated.valid("/quotes") : office.discard(draft.get().id()).map(gone -> "/quotes");
    }

    private static String address(String site, String id) {
        return QuotePaths.entry(site) + "?" + ID + "=" + id;
    }

    /** What was typed into a page that is opened to go on with it. */
    static Optional<KeptDraft> of(Asked asked) {
        return asked.text(ID).flatMap(id -> new DraftOffice(asked.book()).find(id))
                .filter(draft -> draft.form().equals(FORM) && draft.site().equals(asked.part("site")));
    }

    /** All quotes that somebody began and did not issue, the last kept first. */
    static List<Offered> all(Asked asked) {
        return new DraftOffice(asked.book()).all(FORM).stream()
                .map(draft -> new Offered(draft, address(draft.site(), draft.id()))).toList();
    }

    /**
     * One that can be gone on with.
     *
     * @param address where it goes on
     */
    public record Offered(KeptDraft draft, String address) {}
}
