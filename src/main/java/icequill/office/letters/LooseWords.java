package icequill.office.letters;

import icequill.document.Paper;
import icequill.document.Reminder;
import icequill.document.RenewalNotice;
import icequill.document.ServiceAgreement;
import icequill.document.Statement;
import icequill.document.VisitAnnouncement;
import icequill.document.VisitRecord;
import icequill.life.mail.MailLetter;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What mails say of papers that bear no number. */
final class LooseWords {

    private LooseWords() {
    }

    /** That of a paper; a problem for one that is not mailed. */
    static Validated<MailLetter> of(Paper paper) {
        Sentences words = Sentences.of(paper.language(), paper.shop().address().country());
        String day = words.formats().day(paper.date());
        return switch (paper) {
        case Statement account -> letter(words.word("mail.title.statement", day),
                account.billTo().email(),
                words.word("mail.statement", day, words.formats().amountInCurrency(account.balance())));
        case Reminder reminder -> letter(words.word("mail.title.reminder", day), reminder.billTo().email(),
                words.word("mail.reminder", day, words.formats().amountInCurrency(reminder.claims().total())),
                words.word("mail.pay-by", words.formats().day(reminder.by())));
        case RenewalNotice notice -> letter(words.word("mail.title.renewal", notice.agreement()),
                notice.billTo().email(),
                Stream.concat(Stream.of(words.word("mail.renewal", notice.agreement())),
                        Stream.of(notice.terms().lastDayToRefuse()).filter(last -> notice.late().isEmpty())
                                .map(last -> words.word("mail.refuse", words.formats().day(last))))
                        .toArray(String[]::new));
        case ServiceAgreement agreed -> letter(words.word("mail.title.agreement", agreed.number()),
                agreed.billTo().email(), words.word("mail.agreement", agreed.number(), day));
        case VisitRecord record -> visited(record, words);
        case VisitAnnouncement visit -> announced(visit, words);
        default -> Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "this paper is not mailed",
                "a statement, reminder, record, agreement, notice of renewal or announcement of a visit"));
        };
    }

    private static Validated<MailLetter> visited(VisitRecord record, Sentences words) {
        String day = words.formats().day(record.attended().arrived().toLocalDate());
        return letter(words.word("mail.title.record", day), Optional.empty(),
                words.word("mail.record", day, record.attended().site()));
    }

    private static Validated<MailLetter> announced(VisitAnnouncement visit, Sentences words) {
        String day = words.formats().dayOfWeek(visit.begins().toLocalDate());
        return letter(words.word("mail.title.announcement", day), Optional.empty(), words.word("mail.announcement",
                day, words.formats().time(visit.begins().toLocalTime()),
                words.formats().time(visit.ends().toLocalTime()), visit.where().site()));
    }

    private static Validated<MailLetter> letter(String title, Optional<String> printed, String... sentences) {
        return Validated.valid(new MailLetter(title, List.of(), List.of(sentences), printed));
    }
}
