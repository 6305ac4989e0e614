package icequill.web.mail;

import icequill.answer.mail.MailPlan;
import icequill.life.mail.MailMatter.Occasion;
import icequill.office.care.AskedPeriod;
import icequill.office.mail.MailOffice;
import icequill.office.mail.MailPlanning;
import icequill.office.mail.MailScope;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The mails about all papers of a customer, a month or some days, as they would be written; writes those that are ticked. */
public final class MailWritingPage implements Page, FormPage {

    private static final MailPlan NOTHING = new MailPlan(List.of(), List.of());

    /**
     * What its page shows.
     *
     * @param plan empty where nothing is asked for yet, or what is asked for cannot be read
     */
    public record Shown(Optional<MailPlan> plan, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return again(asked, List.of());
    }

    @Override
    public Answer again(Asked asked, List<Problem> wrong) {
        if (Stream.of("customer", "month", "from", "until").allMatch(field -> asked.text(field).isEmpty())) {
            return new Answer.Shown("mail-write", new Shown(Optional.empty(), new TypedFields(asked.fields(), wrong)),
                    NOTHING);
        }
        Validated<MailPlan> plan = plan(asked);
        return Answer.Shown.orProblems("mail-write", new Shown(plan.found(),
                new TypedFields(asked.fields(), wrong.isEmpty() ? plan.problems() : wrong)), plan);
    }

    private static Validated<MailPlan> plan(Asked asked) {
        Problems problems = new Problems();
        Optional<LocalDate> from = asked.day("from", problems);
        Optional<LocalDate> until = asked.day("until", problems);
        return problems.or(() -> new AskedPeriod(asked.month(), from, until))
                .then(period -> new MailPlanning(asked.book(),
                        new MailScope(List.of(), asked.text("customer"), period), Occasion.ISSUED, false).plan());
    }

    @Override
    public Validated<String> done(Asked asked) {
        List<String> papers = asked.texts("paper").stream().distinct().toList();
        if (papers.isEmpty()) {
            return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no paper is ticked",
                    "at least one that is to be mailed"));
        }
        return MailOffice.of(asked.book()).write(papers, Occasion.ISSUED, false)
                .then(written -> written.problems().isEmpty()
                        ? Validated.valid("/mail")
                        : new Validated.Invalid<>(written.problems()));
    }
}
