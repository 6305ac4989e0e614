package icequill.web.run;

import icequill.answer.mail.MailList;
import icequill.office.mail.MailOffice;
import icequill.office.mail.SendingOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;

/** Mails that wait, came back, or of which nobody knows; sends those that are ticked. */
public final class MailsPage implements Page, FormPage {

    private final Runs runs;

    public MailsPage(Runs runs) {
        this.runs = runs;
    }

    /**
     * What its page shows.
     *
     * @param customer whose mails they are, by id; empty for those of all
     */
    public record Shown(MailList list, boolean isAll, Optional<String> customer, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, TypedFields.NONE);
    }

    @Override
    public Validated<String> done(Asked asked) {
        List<String> ticked = asked.texts("mail").stream().distinct().toList();
        return ticked.isEmpty()
                ? Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no mail is ticked",
                        "at least one that is to go out"))
                : Validated.valid(runs.begin(RunKind.SEND, OptionalLong.of(ticked.size()), (shop, progress) -> {
                    AtomicLong count = new AtomicLong();
                    return SendingOffice.of(shop)
                            .send(ticked, mail -> progress.goesOn(count.incrementAndGet()))
                            .map(RunResult.Sent::new);
                }));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, new TypedFields(asked.fields(), problems));
    }

    private static Answer page(Asked asked, TypedFields typed) {
        boolean all = asked.text("all").isPresent();
        Optional<String> customer = asked.text("customer");
        return Answer.of(MailOffice.of(asked.book()).mails(all, customer),
                list -> new Answer.Shown("mails", new Shown(list, all, customer, typed), list));
    }
}
