package icequill.web.agreement;

import icequill.answer.agreement.AgreementAnswer;
import icequill.answer.agreement.AgreementSheet;
import icequill.answer.agreement.AgreementTransfer;
import icequill.answer.agreement.TransferSheet;
import icequill.answer.register.CustomerList;
import icequill.office.agreement.TransferWish;
import icequill.office.register.RegisterLists;
import icequill.problem.Code;
import icequill.problem.Place;
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

/** Gives the rest of an agreement to a new owner; it shows first what that comes to. */
public final class AgreementOwner implements Page, FormPage {

    /**
     * What its page shows.
     *
     * @param customers who may be the new owner
     * @param would what it would come to; empty before that was asked for
     */
    public record Shown(AgreementAnswer agreement, List<CustomerList.Row> customers,
            Optional<AgreementTransfer> would, TypedFields typed) {
        public Shown {
            customers = List.copyOf(customers);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(sheet(asked), sheet -> asked.fields().containsKey("to")
                ? tried(sheet, asked)
                : page(sheet, asked, Optional.empty(), TypedFields.NONE));
    }

    private static Answer tried(AgreementSheet sheet, Asked asked) {
        Validated<TransferSheet> would = transfer(asked, true);
        return page(sheet, asked, would.found().map(TransferSheet::data),
                new TypedFields(asked.fields(), would.problems()));
    }

    @Override
    public Validated<String> done(Asked asked) {
        return transfer(asked, false).map(transfer -> Paths.agreement(transfer.data().next()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return Answer.of(sheet(asked), sheet -> page(sheet, asked, Optional.empty(),
                new TypedFields(asked.fields(), problems)));
    }

    private static Answer page(AgreementSheet sheet, Asked asked, Optional<AgreementTransfer> would,
            TypedFields typed) {
        return new Answer.Shown("agreement-transfer",
                new Shown(sheet.data(), RegisterLists.of(asked.book()).customers("").found()
                        .map(CustomerList::customers).orElse(List.of()), would, typed),
                would.<Object>map(transfer -> transfer).orElseGet(sheet::data));
    }

    private static Validated<AgreementSheet> sheet(Asked asked) {
        return AgreementPage.office(asked).show(asked.part("number"));
    }

    private static Validated<TransferSheet> transfer(Asked asked, boolean isTrial) {
        Problems problems = new Problems();
        NoticeForm form = new NoticeForm(asked, problems);
        LocalDate from = form.day("from").orElse(asked.reader().today());
        Optional<String> to = asked.text("to");
        if (to.isEmpty()) {
            problems.add(Code.MISSING, new Place("", 0, "to"), "no new owner is chosen", "a customer of the book");
        }
        return problems.or(() -> new TransferWish(to.orElseThrow(), from, asked.text("order"), asked.text("who"),
                asked.text("words"), form.seen(), isTrial))
                .then(wish -> AgreementPage.office(asked).transfer(asked.part("number"), wish));
    }
}
