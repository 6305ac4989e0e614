package icequill.web.visit;

import icequill.answer.RecordedVisit;
import icequill.answer.entry.VisitChoices;
import icequill.answer.price.VisitPrice;
import icequill.office.asking.AskingOffice;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import icequill.web.page.TypedMoment;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Enters a visit: all that can be told of it on one page, with its price beside it. */
public final class VisitEntry implements Page, FormPage {

    /**
     * What its page shows.
     *
     * @param price empty before anything was typed
     */
    public record Shown(VisitChoices choices, Optional<VisitPrice> price, TypedFields typed) {}

    /** The empty page, or as it stands while somebody types. */
    @Override
    public Answer answer(Asked asked) {
        return Answer.of(choices(asked), choices -> asked.text("day").isEmpty()
                ? new Answer.Shown("visit-new", new Shown(choices, Optional.empty(), TypedFields.NONE), choices)
                : page(asked, choices, priced(asked)));
    }

    @Override
    public Validated<String> done(Asked asked) {
        AskingOffice office = AskingOffice.of(asked.book());
        VisitForm form = new VisitForm(asked, asked.part("site"));
        return form.draft().then(draft -> office.store(office.typed(draft))).map(RecordedVisit::visit)
                .map(Paths::visit);
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return Answer.of(choices(asked), choices -> page(asked, choices, new Validated.Invalid<>(problems)));
    }

    private static Answer page(Asked asked, VisitChoices choices, Validated<VisitPrice> price) {
        VisitForm form = new VisitForm(asked, asked.part("site"));
        form.draft();
        Shown shown = new Shown(choices, price.found(),
                new TypedFields(asked.fields(), form.atFields(price.problems())));
        return new Answer.Shown("visit-new", shown, choices);
    }

    private static Validated<VisitPrice> priced(Asked asked) {
        AskingOffice office = AskingOffice.of(asked.book());
        return new VisitForm(asked, asked.part("site")).draft()
                .then(draft -> office.price(office.typed(draft), asked.reader().language()))
                .map(sheet -> sheet.data(false));
    }

    /** By the rates of the day that was typed, or of today where that has none, so that nothing typed is lost. */
    private static Validated<VisitChoices> choices(Asked asked) {
        LocalDate today = asked.reader().today();
        AskingOffice office = AskingOffice.of(asked.book());
        return asked.text("day").flatMap(text -> TypedMoment.day(text, "day").found())
                .flatMap(day -> choices(office, asked, day).found()).map(Validated::valid)
                .orElseGet(() -> choices(office, asked, today));
    }

    private static Validated<VisitChoices> choices(AskingOffice office, Asked asked, LocalDate day) {
        return office.choices(asked.part("site"), day, asked.reader().language());
    }
}
