package icequill.web.mail;

import icequill.answer.mail.MailList;
import icequill.answer.mail.MailSheet;
import icequill.document.Reminder;
import icequill.explain.ConstantKey;
import icequill.office.AccountOffice;
import icequill.office.Office;
import icequill.office.PlanOffice;
import icequill.office.days.AnnouncementOffice;
import icequill.office.letters.LooseMails;
import icequill.office.letters.LoosePaper;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedChoice;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A paper that bears no number, by mail: to whom it would go, what is said and what goes along; then that mail is written. */
public enum LooseMailPage implements Page, FormPage {
    /** What a customer owes. */
    STATEMENT("customer", LooseMailPage.DAY) {
        @Override
        Validated<LoosePaper> paper(Asked asked, FormName name, PaperOptions options) {
            return AccountOffice.of(asked.book()).statementOf(name, options, Optional.empty());
        }
    },
    /** What is past due. */
    REMINDER("customer", LooseMailPage.DAY, LooseMailPage.LEVEL) {
        @Override
        Validated<LoosePaper> paper(Asked asked, FormName name, PaperOptions options) {
            return level(asked).then(level -> AccountOffice.of(asked.book()).reminderOf(name, options, level));
        }
    },
    /** That an agreement renews itself, where its laws count a mail. */
    NOTICE("number", LooseMailPage.LATE) {
        @Override
        Validated<LoosePaper> paper(Asked asked, FormName name, PaperOptions options) {
            return PlanOffice.of(asked.book()).noticeByMail(name, options, asked.text(LATE));
        }
    },
    AGREEMENT("number") {
        @Override
        Validated<LoosePaper> paper(Asked asked, FormName name, PaperOptions options) {
            return PlanOffice.of(asked.book()).agreementPaper(name, options);
        }
    },
    /** What a visit found and did. */
    RECORD("visit") {
        @Override
        Validated<LoosePaper> paper(Asked asked, FormName name, PaperOptions options) {
            return Office.of(asked.book()).recordOf(name, options);
        }
    },
    /** That somebody comes. */
    ANNOUNCEMENT("visit") {
        @Override
        Validated<LoosePaper> paper(Asked asked, FormName name, PaperOptions options) {
            return AnnouncementOffice.of(asked.book()).announcementOf(asked.part("visit"), options);
        }
    };

    private static final String DAY = "day";
    private static final String LEVEL = "level";
    private static final String LATE = "late";
    private static final String MAIL = "/mail";
    private static final Extras BY_MAIL = new Extras(false, false, false, true);

    private final String part;
    private final String fields;

    LooseMailPage(String part, String... fields) {
        this.part = part;
        this.fields = String.join(" ", fields);
    }

    private List<String> fields() {
        return fields.isEmpty() ? List.of() : List.of(fields.split(" "));
    }

    /** The paper that is asked for, not written yet. */
    abstract Validated<LoosePaper> paper(Asked asked, FormName name, PaperOptions options);

    /**
     * What its page shows.
     *
     * @param name by which the paper is asked for
     * @param file where the paper can be looked at
     * @param fields by which it can be asked for otherwise
     * @param found empty where there is no such paper
     */
    public record Shown(String kind, String name, String address, String file, List<String> fields,
            Optional<Proposed> found, TypedFields typed) {
        public Shown {
            fields = List.copyOf(fields);
        }
    }

    /**
     * A mail that is not written yet.
     *
     * @param mails that were written about the same paper
     */
    public record Proposed(MailList mails, MailSheet next) {}

    @Override
    public Answer answer(Asked asked) {
        return again(asked, List.of());
    }

    @Override
    public Answer again(Asked asked, List<Problem> wrong) {
        LooseMails mails = new LooseMails(asked.book());
        Validated<Proposed> proposed = paper(asked).then(paper -> mails.about(paper)
                .then(before -> mails.proposal(paper).map(next -> new Proposed(before, next))));
        if (proposed.problems().stream().anyMatch(problem -> problem.code() == Code.UNKNOWN_NAME)) {
            return new Answer.Refused(proposed.problems());
        }
        return Answer.Shown.orProblems("loose-mail", new Shown(ConstantKey.of(this), asked.part(part), asked.path(),
                asked.path().substring(0, asked.path().length() - MAIL.length()), fields(), proposed.found(),
                new TypedFields(asked.fields(), wrong.isEmpty() ? proposed.problems() : wrong)),
                proposed.map(Proposed::next));
    }

    /** The paper as a file, to look at. */
    public Answer file(Asked asked) {
        return Answer.of(paper(asked).then(paper -> new LooseMails(asked.book()).pdf(paper)
                .map(pdf -> new Answer.Sent(pdf, paper.name() + ".pdf"))), sent -> sent);
    }

    @Override
    public Validated<String> done(Asked asked) {
        return paper(asked).then(paper -> new LooseMails(asked.book()).write(paper, BY_MAIL))
                .map(written -> Paths.mail(written.mail().orElseThrow()));
    }

    private Validated<LoosePaper> paper(Asked asked) {
        Problems problems = new Problems();
        LocalDate day = fields().contains(DAY)
                ? asked.day(DAY, problems).orElse(asked.reader().today())
                : asked.reader().today();
        return problems.or(() -> day).then(valid -> paper(asked, new FormName.InBook(asked.part(part)),
                new PaperOptions(Optional.empty(), valid, Optional.empty(), BY_MAIL)));
    }

    private static Validated<Reminder.Level> level(Asked asked) {
        return asked.text(LEVEL).isEmpty()
                ? Validated.valid(Reminder.Level.FIRST)
                : TypedChoice.of(asked, LEVEL, Stream.of(Reminder.Level.values()).toList(), ConstantKey::of);
    }
}
