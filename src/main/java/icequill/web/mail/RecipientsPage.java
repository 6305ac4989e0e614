package icequill.web.mail;

import icequill.answer.mail.MailRecipients;
import icequill.office.mail.RecipientsOffice;
import icequill.office.mail.RecipientsWish;
import icequill.party.Contact;
import icequill.party.MailWishes;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Who at a customer's gets which papers by mail, and how; changes it. */
public final class RecipientsPage implements Page, FormPage {

    private static final String NAME = "name-";

    /**
     * What its page shows.
     *
     * @param isAgain whether it was sent and could not be stored
     */
    public record Shown(MailRecipients recipients, boolean isAgain, TypedFields typed) {

        /** What stands in a field: what was typed, or what is known. */
        public String value(String field, String known) {
            return isAgain ? typed.value(field) : known;
        }

        /** Whether a box is ticked. */
        public boolean ticked(String field, String value, boolean known) {
            return isAgain ? typed.has(field, value) : known;
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return page(asked, false, List.of());
    }

    @Override
    public Validated<String> done(Asked asked) {
        List<RecipientsWish.Person> people = IntStream
                .range(0, new TypedFields(asked.fields(), List.of()).rows(NAME, "")).boxed()
                .filter(row -> asked.text(NAME + row).isPresent())
                .map(row -> new RecipientsWish.Person(asked.text(NAME + row).orElse(""),
                        asked.text("email-" + row).orElse(""), purposes(asked.texts("for-" + row))))
                .toList();
        MailWishes wishes = new MailWishes(purposes(asked.texts("at-once")), asked.text("bare").isPresent(),
                asked.text("data").isPresent(), asked.texts("enclosed"));
        return RecipientsOffice.of(asked.book()).change(asked.part("customer"), new RecipientsWish(people, wishes))
                .map(changed -> "/customers/" + changed.customer() + "/mail");
    }

    private static Set<Contact.Purpose> purposes(List<String> keys) {
        return Arrays.stream(Contact.Purpose.values())
                .filter(purpose -> keys.contains(purpose.name().toLowerCase(Locale.ROOT)))
                .collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, true, problems);
    }

    private static Answer page(Asked asked, boolean isAgain, List<Problem> problems) {
        return Answer.of(RecipientsOffice.of(asked.book()).of(asked.part("customer")),
                found -> new Answer.Shown("recipients",
                        new Shown(found, isAgain, new TypedFields(asked.fields(), problems)), found));
    }
}
