package icequill.web.agreement;

import icequill.answer.agreement.AgreementAnswer;
import icequill.answer.agreement.AgreementEnding;
import icequill.answer.agreement.AgreementSheet;
import icequill.answer.agreement.EndingSheet;
import icequill.life.agreement.NoticeBy;
import icequill.life.agreement.NoticeWay;
import icequill.office.agreement.NoticeWish;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Ends an agreement by notice; it shows first what goes back. */
public final class AgreementEnd implements Page, FormPage {

    /**
     * What its page shows.
     *
     * @param would what it would come to; empty before that was asked for
     */
    public record Shown(AgreementAnswer agreement, Optional<AgreementEnding> would, List<String> ways,
            TypedFields typed) {
        public Shown {
            ways = List.copyOf(ways);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(sheet(asked), sheet -> asked.fields().isEmpty()
                ? page(sheet, Optional.empty(), TypedFields.NONE)
                : tried(sheet, asked));
    }

    private static Answer tried(AgreementSheet sheet, Asked asked) {
        Validated<EndingSheet> would = end(asked, true);
        return page(sheet, would.found().map(EndingSheet::data), new TypedFields(asked.fields(), would.problems()));
    }

    @Override
    public Validated<String> done(Asked asked) {
        return end(asked, false).map(ending -> Paths.agreement(ending.data().agreement()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return Answer.of(sheet(asked),
                sheet -> page(sheet, Optional.empty(), new TypedFields(asked.fields(), problems)));
    }

    private static Answer page(AgreementSheet sheet, Optional<AgreementEnding> would, TypedFields typed) {
        return new Answer.Shown("agreement-end", new Shown(sheet.data(), would, NoticeForm.WAYS, typed),
                would.<Object>map(ending -> ending).orElseGet(sheet::data));
    }

    private static Validated<AgreementSheet> sheet(Asked asked) {
        return AgreementPage.office(asked).show(asked.part("number"));
    }

    private static Validated<EndingSheet> end(Asked asked, boolean isTrial) {
        Problems problems = new Problems();
        NoticeForm form = new NoticeForm(asked, problems);
        LocalDate received = form.day();
        Optional<LocalDate> last = form.day("lastDay");
        Optional<NoticeWay> way = form.way();
        NoticeBy by = asked.text("by").filter("shop"::equals).isPresent() ? NoticeBy.SHOP : NoticeBy.CUSTOMER;
        return problems.or(() -> new NoticeWish(received, last, by, way.orElseThrow(), asked.text("who"),
                asked.text("words"), form.seen(), isTrial))
                .then(wish -> AgreementPage.office(asked).end(asked.part("number"), wish));
    }
}
