package icequill.web.offer;

import icequill.answer.ProblemReport;
import icequill.answer.quote.QuoteEntry;
import icequill.answer.quote.QuoteFigures;
import icequill.answer.quote.QuoteSheet;
import icequill.ledger.papers.Pdf;
import icequill.office.billing.IssueOptions;
import icequill.office.quoting.QuoteOffice;
import icequill.office.quoting.QuotedPaper;
import icequill.office.quoting.Telling;
import icequill.party.Language;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.page.Page;
import icequill.render.view.ComparisonSheetView;
import icequill.render.view.MaintenanceQuoteView;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.PageDraft;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes a maintenance quote while the customer waits: ways of care side by side, drawn anew with every change, until it is issued. */
public final class QuoteEntryPage implements icequill.web.page.Page, FormPage {

    /**
     * What its page shows.
     *
     * @param address of the page
     * @param draft under which the page keeps what is typed
     * @param isGoingOn whether it goes on with something that was kept
     * @param figures empty before anything was typed, and while something is wrong
     * @param quote the same as the quote has it, and {@code sheet} as the comparison sheet has it
     */
    public record Shown(QuoteEntry entry, String address, int rows, String draft, boolean isGoingOn,
            Optional<QuoteFigures> figures,
            Optional<Page> quote, Optional<Page> sheet, TypedFields typed) {}

    /** The empty page, or as it stands while somebody types. */
    @Override
    public Answer answer(Asked asked) {
        boolean isTyped = asked.text("start").isPresent() || asked.text("day").isPresent();
        return Answer.of(choices(asked), entry -> isTyped
                ? workedOut(asked, entry)
                : QuoteDraft.of(asked).gone().orElseGet(() -> shown(asked, entry, Optional.empty(),
                        QuoteDraft.of(asked).found().map(draft -> new TypedFields(draft.fields(), List.of()))
                                .orElse(TypedFields.NONE))));
    }

    /** One of its papers, as it would be. */
    public Answer paper(Asked asked) {
        return Answer.of(choices(asked), entry -> {
            QuoteForm form = new QuoteForm(asked, entry);
            QuotedPaper which = asked.text("paper").flatMap(QuoteEntryPage::named).orElse(QuotedPaper.QUOTE);
            Validated<Pdf> printed = form.typed().then(typed -> QuoteOffice.of(asked.book()).preview(typed, which,
                    options(form, form.language())));
            return printed instanceof Validated.Valid<Pdf>(Pdf pdf)
                    ? new Answer.Sent(pdf, which.name().toLowerCase(Locale.ROOT) + ".pdf")
                    : shown(asked, entry, Optional.empty(), typed(asked, form, printed.problems()));
        });
    }

    private static Optional<QuotedPaper> named(String name) {
        return List.of(QuotedPaper.values()).stream().filter(one -> one.name().toLowerCase(Locale.ROOT).equals(name))
                .findFirst();
    }

    @Override
    public Validated<String> done(Asked asked) {
        return choices(asked).then(entry -> QuoteDraft.of(asked).once(() -> {
            QuoteForm form = new QuoteForm(asked, entry);
            return form.typed().then(typed -> QuoteOffice.of(asked.book()).issue(typed,
                    new IssueOptions(form.day(), form.language())))
                    .map(issued -> Paths.quote(issued.number()));
        }));
    }

    @Override
    public Answer again(Asked sent, List<Problem> problems) {
        Asked asked = PageDraft.afresh(sent, problems);
        return Answer.of(choices(asked), entry -> shown(asked, entry, Optional.empty(),
                typed(asked, new QuoteForm(asked, entry), problems)));
    }

    private static Answer workedOut(Asked asked, QuoteEntry entry) {
        QuoteForm form = new QuoteForm(asked, entry);
        Telling telling = new Telling(asked.text("part").filter("ways"::equals).isEmpty(),
                asked.text("owner").filter("yes"::equals).isPresent());
        Validated<QuoteSheet> sheet = form.typed().then(typed -> QuoteOffice.of(asked.book()).figures(typed,
                options(form, Optional.of(asked.reader().language())), telling));
        return shown(asked, entry, sheet.found(), typed(asked, form, sheet.problems()));
    }

    private static TypedFields typed(Asked asked, QuoteForm form, List<Problem> problems) {
        return new TypedFields(asked.fields(), form.atFields(problems));
    }

    private static Answer shown(Asked asked, QuoteEntry entry, Optional<QuoteSheet> sheet, TypedFields typed) {
        Optional<QuoteFigures> figures = sheet.map(QuoteSheet::data);
        Shown shown = new Shown(entry, entry.site().map(QuotePaths::entry).orElse(QuotePaths.NEW),
                NewSiteForm.rows(typed.fields()),
                QuoteDraft.of(asked).id(), QuoteDraft.of(asked).found().isPresent(), figures,
                sheet.map(found -> MaintenanceQuoteView.of(found.quote())),
                sheet.flatMap(QuoteSheet::comparison).map(ComparisonSheetView::of), typed);
        return new Answer.Shown("quote-new", shown, figures.<Object>map(found -> found)
                .orElseGet(() -> typed.problems().isEmpty() ? entry : new ProblemReport(typed.problems())));
    }

    private static PaperOptions options(QuoteForm form, Optional<Language> language) {
        return new PaperOptions(Optional.empty(), form.day(), language, Extras.NONE);
    }

    private static Validated<QuoteEntry> choices(Asked asked) {
        return QuoteOffice.of(asked.book()).choices(Optional.ofNullable(asked.parts().get("site")),
                asked.reader().today(), asked.reader().language());
    }
}
