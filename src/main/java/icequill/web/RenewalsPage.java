package icequill.web;

import icequill.answer.register.RenewalList;
import icequill.office.RenewalOffice;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.Optional;

/** Agreements that renew themselves, and when customers are to be told. */
final class RenewalsPage implements Page {

    private static final String UNTIL = "until";

    /**
     * What its page shows.
     *
     * @param list empty where the day cannot be read
     */
    public record Shown(Optional<RenewalList> list, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        LocalDate today = asked.reader().today();
        Validated<LocalDate> until = asked.day(UNTIL, today.plusYears(1));
        Validated<RenewalList> list = until.then(
                day -> RenewalOffice.of(asked.book(), Optional.of(asked.reader().language())).upcoming(today, day));
        return Answer.Shown.orProblems("renewals",
                new Shown(list.found(), new TypedFields(asked.fields(), list.problems())), list);
    }
}
