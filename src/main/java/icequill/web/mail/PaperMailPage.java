package icequill.web.mail;

import icequill.answer.mail.MailList;
import icequill.answer.mail.MailSheet;
import icequill.life.mail.MailMatter.Occasion;
import icequill.office.mail.MailOffice;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.util.List;

/** Mails about a paper, and the next one as it would be written. */
public final class PaperMailPage implements Page, FormPage {

    private static final String LAPSES = "lapses";

    /**
     * What its page shows.
     *
     * @param number of the paper
     * @param next as it would be written
     * @param lapses whether it says that prices soon hold no longer
     */
    public record Shown(String number, MailList mails, MailSheet next, boolean lapses, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, TypedFields.NONE);
    }

    @Override
    public Validated<String> done(Asked asked) {
        return MailOffice.of(asked.book())
                .write(List.of(asked.part("number")), occasion(asked), asked.text("again").isPresent())
                .map(written -> Paths.mail(written.mails().getFirst().mail()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, new TypedFields(asked.fields(), problems));
    }

    private static Occasion occasion(Asked asked) {
        return asked.text(LAPSES).isPresent() ? Occasion.LAPSES_SOON : Occasion.ISSUED;
    }

    private static Answer page(Asked asked, TypedFields typed) {
        String number = asked.part("number");
        MailOffice office = MailOffice.of(asked.book());
        return Answer.of(office.about(number).then(mails -> office.proposal(number, occasion(asked))
                .map(next -> new Shown(number, mails, next, occasion(asked) == Occasion.LAPSES_SOON, typed))),
                shown -> new Answer.Shown("paper-mail", shown, shown.mails()));
    }
}
