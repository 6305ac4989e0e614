package icequill.web.mail;

import icequill.answer.mail.MailSheet;
import icequill.office.mail.MailOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.util.List;

/** A mail: to whom, what it says, what happened, and what a person decides about it. */
public final class MailPage implements Page, FormPage {

    /** What its page shows. */
    public record Shown(MailSheet sheet, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, TypedFields.NONE);
    }

    @Override
    public Validated<String> done(Asked asked) {
        MailOffice office = MailOffice.of(asked.book());
        String id = asked.part("mail");
        String reason = asked.text("reason").orElse("");
        return (switch (asked.text("what").orElse("")) {
        case "again" -> office.retry(id);
        case "went-out" -> office.found(id, true);
        case "did-not" -> office.found(id, false);
        case "returned" -> office.returned(id, reason);
        case "withdraw" -> office.withdraw(id, reason);
        default -> Validated.<MailSheet>invalid(new Problem(Code.MISSING, Place.NOWHERE, "nothing is chosen", ""));
        }).map(sheet -> Paths.mail(sheet.mail().mail()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, new TypedFields(asked.fields(), problems));
    }

    private static Answer page(Asked asked, TypedFields typed) {
        return Answer.of(MailOffice.of(asked.book()).mail(asked.part("mail")),
                sheet -> new Answer.Shown("mail", new Shown(sheet, typed), sheet));
    }
}
