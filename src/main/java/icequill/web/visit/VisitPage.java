package icequill.web.visit;

import icequill.answer.entry.VisitChoices;
import icequill.answer.history.VisitAnswer;
import icequill.answer.history.VisitSheet;
import icequill.answer.history.VisitState;
import icequill.answer.price.VisitPrice;
import icequill.office.Office;
import icequill.office.asking.AskingOffice;
import icequill.office.asking.KnownVisit;
import icequill.office.asking.KnownVisits;
import icequill.office.asking.LastChange;
import icequill.office.care.HistoryOffice;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.FormName;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.PageDraft;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A visit: what was found and done, what it costs, and the papers that bill it. */
public final class VisitPage implements Page {

    /**
     * What its page shows.
     *
     * @param version of one that may be changed; empty for others
     * @param isToBeQuoted whether it is the plan of a repair
     * @param price of one that is not billed; empty where it has none
     * @param problems that keep it from having one, or from what was asked for
     * @param changed who changed it meanwhile, and when, where somebody did
     * @param isAgain whether somebody sent once more what it was made from
     * @param isAboveLimit whether somebody has to allow more before it is billed
     * @param approver who may; empty where nobody is named, or need not
     * @param typed what was typed of that
     */
    public record Shown(VisitAnswer visit, Optional<String> version, boolean isToBeQuoted, Optional<VisitPrice> price,
            List<Problem> problems, Optional<LastChange> changed, boolean isAgain, boolean isAboveLimit,
            Optional<VisitChoices.Approver> approver,
            TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, List.of(), TypedFields.NONE);
    }

    /** @param wrong what keeps it from what was asked for */
    static Answer page(Asked asked, List<Problem> wrong, TypedFields typed) {
        return Answer.of(HistoryOffice.of(asked.book()).visit(asked.part("visit"),
                Optional.of(asked.reader().language())), found -> page(asked, found, wrong, typed));
    }

    private static Answer page(Asked asked, VisitSheet found, List<Problem> wrong, TypedFields typed) {
        String id = found.data().visit().id();
        Optional<Validated<VisitPrice>> price = found.data().visit().state() == VisitState.DONE
                ? Optional.of(Office.of(asked.book())
                        .price(new FormName.InBook(id), Optional.of(asked.reader().language()))
                        .map(sheet -> sheet.data(false)))
                : Optional.empty();
        Optional<VisitPrice> told = price.flatMap(Validated::found);
        boolean isAbove = told.stream().flatMap(one -> one.notices().stream())
                .anyMatch(notice -> notice.code() == Code.OVER_LIMIT);
        Optional<KnownVisit> known = new KnownVisits(asked.book()).find(id).found();
        return new Answer.Shown("visit",
                new Shown(found.data(), known.map(KnownVisit::version),
                        known.filter(KnownVisit::isToBeQuoted).isPresent(), told,
                        Stream.concat(wrong.stream(), price.map(Validated::problems).orElse(List.of()).stream())
                                .toList(),
                        changed(asked, id, wrong), PageDraft.isAgain(asked), isAbove,
                        isAbove ? approver(asked, found) : Optional.empty(), typed),
                found.data());
    }

    private static Optional<LastChange> changed(Asked asked, String id, List<Problem> wrong) {
        return wrong.stream().anyMatch(problem -> problem.code() == Code.CHANGED_MEANWHILE)
                ? new KnownVisits(asked.book()).lastChange(id)
                : Optional.empty();
    }

    private static Optional<VisitChoices.Approver> approver(Asked asked, VisitSheet found) {
        return AskingOffice.of(asked.book()).choices(found.data().visit().site(),
                found.data().visit().began().toLocalDate(), asked.reader().language()).found()
                .flatMap(VisitChoices::approver);
    }
}
