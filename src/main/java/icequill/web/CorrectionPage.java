package icequill.web;

import icequill.answer.BookedPaper;
import icequill.answer.register.CustomerList;
import icequill.answer.shown.PaperMatter;
import icequill.answer.shown.PaperSheet;
import icequill.office.billing.CreditOffice;
import icequill.office.care.ShowOffice;
import icequill.office.care.Shows;
import icequill.office.register.RegisterLists;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.FormName;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Gives an invoice back, or issues it anew; it shows first what that comes to. */
final class CorrectionPage implements Page, FormPage {

    private final boolean isReissue;

    private CorrectionPage(boolean isReissue) {
        this.isReissue = isReissue;
    }

    static CorrectionPage credit() {
        return new CorrectionPage(false);
    }

    static CorrectionPage reissue() {
        return new CorrectionPage(true);
    }

    /**
     * What its page shows.
     *
     * @param would what would be issued; empty before it was asked for
     * @param customers who may pay what is issued anew
     */
    public record Shown(PaperSheet paper, boolean isReissue, List<BookedPaper> would, TypedFields typed,
            List<CustomerList.Row> customers) {

        public Shown {
            would = List.copyOf(would);
            customers = List.copyOf(customers);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(paper(asked), paper -> asked.fields().isEmpty()
                ? shown(paper, asked.typing(begun(paper)), List.of(), List.of())
                : page(paper, asked, credited(asked, true)));
    }

    /** What an invoice says stands there to be mended. */
    private Map<String, List<String>> begun(PaperSheet paper) {
        return paper.data().matter().flatMap(PaperMatter::purchaseOrder).filter(order -> isReissue)
                .map(order -> Map.of("purchaseOrder", List.of(order))).orElse(Map.of());
    }

    @Override
    public Validated<String> done(Asked asked) {
        return paper(asked).then(paper -> unchanged(asked, paper)).then(same -> credited(asked, false))
                .map(papers -> Paths.paper(papers.getLast().number()));
    }

    /** Somebody, or the same person in another window, may have given back more of it since the page was shown. */
    private static Validated<PaperSheet> unchanged(Asked asked, PaperSheet paper) {
        int credits = paper.data().credits().size();
        return asked.text("credits").filter(String.valueOf(credits)::equals).isPresent()
                ? Validated.valid(paper)
                : Validated.invalid(new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
                        "since this page was shown, something of " + paper.data().issued().number()
                                + " was given back: "
                                + paper.data().credits().getLast().title(),
                        "look what is left of it, then once more"));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return Answer.of(paper(asked), paper -> shown(paper, asked, List.of(), problems));
    }

    private Answer page(PaperSheet paper, Asked asked, Validated<List<BookedPaper>> would) {
        return shown(paper, asked, would.found().orElse(List.of()), would.problems());
    }

    private Answer shown(PaperSheet paper, Asked asked, List<BookedPaper> would, List<Problem> problems) {
        return new Answer.Shown("correction",
                new Shown(paper, isReissue, would, new TypedFields(asked.fields(), problems),
                        RegisterLists.of(asked.book()).customers("").found().map(CustomerList::customers)
                                .filter(all -> isReissue).orElse(List.of())),
                paper.data());
    }

    private static Validated<PaperSheet> paper(Asked asked) {
        return ShowOffice.of(asked.book()).show(FormName.of(asked.part("number")), Shows.INVOICE,
                Optional.of(asked.reader().language())).map(found -> found.paper().orElseThrow());
    }

    private Validated<List<BookedPaper>> credited(Asked asked, boolean isTrial) {
        CreditForm form = new CreditForm(asked);
        CreditOffice office = CreditOffice.of(asked.book());
        String number = asked.part("number");
        return isReissue
                ? form.reissue(isTrial).then(options -> office.credit(number, options))
                : form.credit(isTrial).then(options -> office.credit(number, options));
    }
}
