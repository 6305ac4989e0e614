package icequill.office.writing;

import icequill.answer.WrittenPaper;
import icequill.document.Paper;
import icequill.document.Reminder;
import icequill.document.RenewalNotice;
import icequill.document.ServiceAgreement;
import icequill.document.Statement;
import icequill.document.VisitAnnouncement;
import icequill.document.VisitRecord;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.entries.MailFile;
import icequill.life.mail.MailLetter;
import icequill.life.mail.MailMatter;
import icequill.party.Contact;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes mails about papers that bear no number: what lies in papers/ goes along, and is kept in the book from then on. */
public record LooseMails(ShopBook book) {

    private static final String PDF = "application/pdf";

    /** Writes a mail about a paper that was just printed for a site. */
    public Validated<WrittenPaper> about(WrittenPaper written, Paper paper, Site site) {
        return site.accounts().stream().findFirst().map(customer -> about(written, paper, customer,
                Optional.of(site.id()))).orElseGet(
                        () -> Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE,
                                "nobody of the book stands behind the paper", "a paper for a customer of the book")));
    }

    /**
     * Writes a mail about a paper that was just printed.
     *
     * @param customer by id
     * @param site by id; empty where it is about all of a customer's
     */
    public Validated<WrittenPaper> about(WrittenPaper written, Paper paper, String customer, Optional<String> site) {
        return letter(paper).then(letter -> file(written).then(file -> book.write(open -> {
            LifeStep step = new MailDesk(book).first(open, new MailMatter.Loose(written.name(), purpose(paper),
                    paper.language(), file.hash(), Optional.of(letter)), customer, site, file.hash());
            open.lifeSteps().add(step);
            open.mailFiles().keep(step.id(), file);
            return Validated.valid(written.by(step.id()));
        })));
    }

    private static Validated<MailFile> file(WrittenPaper written) {
        try {
            return Validated.valid(MailFile.of(written.name() + ".pdf", PDF,
                    Files.readAllBytes(written.files().getFirst())));
        } catch (IOException unreadable) {
            return Validated.invalid(new Problem(Code.UNREADABLE,
                    Place.ofFile(written.files().getFirst().toString()), "the paper cannot be read", "it once more"));
        }
    }

    private static Contact.Purpose purpose(Paper paper) {
        return switch (paper) {
        case VisitRecord record -> Contact.Purpose.VISITS;
        case VisitAnnouncement visit -> Contact.Purpose.VISITS;
        case ServiceAgreement agreement -> Contact.Purpose.RENEWALS;
        case RenewalNotice notice -> Contact.Purpose.RENEWALS;
        default -> Contact.Purpose.BILLS;
        };
    }

    private static Validated<MailLetter> letter(Paper paper) {
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
