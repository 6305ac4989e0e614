package icequill.office.mail;

import icequill.answer.mail.MailEntry;
import icequill.answer.mail.MailList;
import icequill.answer.mail.MailSheet;
import icequill.answer.mail.MailTelling;
import icequill.files.form.MailSettings;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.papers.IssuedPaper;
import icequill.life.mail.MailEvent;
import icequill.life.mail.MailMatter;
import icequill.life.mail.MailMatter.Occasion;
import icequill.life.mail.MailState;
import icequill.office.letters.Repeat;
import icequill.office.letters.WrittenMail;
import icequill.office.writing.MailDesk;
import icequill.office.writing.PaperNumbers;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.life.MailLife;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The office that writes mails, and knows what became of them. */
public final class MailOffice {

    private final ShopBook book;
    private final MailDesk desk;
    private final ZoneId zone;

    private MailOffice(ShopBook book) {
        this.book = book;
        this.desk = new MailDesk(book);
        this.zone = ShopDay.zone(book.folder(), book.clock());
    }

    public static MailOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static MailOffice of(ShopBook book) {
        return new MailOffice(book);
    }

    /**
     * Mails, those first that a person has to look after.
     *
     * @param isAll those too that went out or were withdrawn
     * @param customer by id; empty for those of all
     */
    public Validated<MailList> mails(boolean isAll, Optional<String> customer) {
        return book.read(open -> Validated.valid(new MailList(MailLife.all(open, isAll).stream()
                .map(mail -> entry(open, mail))
                .filter(mail -> customer.isEmpty() || customer.get().equals(mail.customer()))
                .sorted(Comparator.comparingInt(MailOffice::order).thenComparing(MailEntry::since)
                        .thenComparing(MailEntry::mail))
                .toList(), List.of())));
    }

    private static int order(MailEntry mail) {
        return switch (mail.state()) {
        case UNKNOWN, REFUSED, RETURNED -> 0;
        case DRAFTED -> 1;
        case WAITING, SENDING -> 2;
        case SENT, WITHDRAWN -> 3;
        };
    }

    /** One of them; one that waits as it would go out now. */
    public Validated<MailSheet> mail(String id) {
        return book.read(open -> MailLife.of(open, id).map(mail -> sheet(open, mail)));
    }

    MailSheet sheet(Reading open, MailLife mail) {
        if (mail.state() instanceof MailState.Waiting) {
            Validated<WrittenMail> written = assembly().of(open, mail);
            return MailSheet.of(entry(open, mail), mail, written.found().map(WrittenMail::copy), written.problems(),
                    zone);
        }
        return MailSheet.of(entry(open, mail), mail, Optional.empty(), List.of(), zone);
    }

    MailAssembly assembly() {
        return new MailAssembly(book, MailSettings.of(book.folder()), MailTelling.of(book).here());
    }

    MailEntry entry(Reading open, MailLife mail) {
        return MailTelling.of(book).entry(open, mail);
    }

    /**
     * Writes a mail about each of some papers; nothing goes out yet. A paper about which none can be written does not hold up the others.
     *
     * @param again papers too whose mail went out before
     * @return the mails and why others could not be written; where there is none at all, only that
     */
    public Validated<MailList> write(List<String> numbers, Occasion occasion, boolean again) {
        return book.together(held -> {
            MailOffice office = new MailOffice(held);
            Problems problems = new Problems();
            List<MailEntry> written = new ArrayList<>();
            numbers.forEach(number -> problems.take(held.write(open -> PaperNumbers.find(open, number)
                    .then(issued -> office.write(open, issued, occasion, again)))).ifPresent(written::add));
            return written.isEmpty()
                    ? problems.or(() -> new MailList(written, List.of()))
                    : Validated.valid(new MailList(written, problems.list()));
        });
    }

    private Validated<MailEntry> write(Transaction open, IssuedPaper issued, Occasion occasion, boolean again) {
        List<MailLife> before = MailLife.about(open, issued.number());
        Optional<Problem> repeated = Repeat.of(before, desk.now(), again);
        if (repeated.isPresent()) {
            return Validated.invalid(repeated.get());
        }
        return first(issued, before, occasion).then(step -> {
            MailSheet sheet = new MailOffice(book.within(open)).sheet(open, MailLife.proposed(step));
            if (!sheet.problems().isEmpty()) {
                return new Validated.Invalid<>(sheet.problems());
            }
            open.lifeSteps().add(step);
            return Validated.valid(sheet.mail());
        });
    }

    private Validated<LifeStep> first(IssuedPaper issued, List<MailLife> before, Occasion occasion) {
        return issued.origin().customer()
                .map(customer -> Validated.valid(desk.first(MailLife.idAfter(issued.number(), before),
                        new MailMatter.Numbered(issued.number(), occasion), customer, issued.origin().site(),
                        issued.seal())))
                .orElseGet(() -> Validated.invalid(new Problem(Code.MISSING, new Place(issued.number(), 0, ""),
                        "nobody of the book stands behind the paper", "a paper for a customer of the book")));
    }

    /** The mail about a paper as it would be written; its problems where it cannot be. */
    public Validated<MailSheet> proposal(String number, Occasion occasion) {
        return book.read(open -> PaperNumbers.find(open, number)
                .then(issued -> proposal(open, issued, MailLife.about(open, issued.number()), occasion)));
    }

    /** @param before the mails about it */
    Validated<MailSheet> proposal(Reading open, IssuedPaper issued, List<MailLife> before, Occasion occasion) {
        return first(issued, before, occasion).map(step -> sheet(open, MailLife.proposed(step)));
    }

    /** Mails about a paper, in their order. */
    public Validated<MailList> about(String number) {
        return book.read(open -> PaperNumbers.find(open, number).map(issued -> new MailList(
                MailTelling.of(book).about(open, issued.number()), List.of())));
    }

    /** Has a mail tried again that was put off, refused or returned: it may go out at once. */
    public Validated<MailSheet> retry(String id) {
        return step(id, new MailEvent.Retry(desk.now()));
    }

    /** Notes what a person found out about a mail of which nobody knew, or which lay in a folder. */
    public Validated<MailSheet> found(String id, boolean wentOut) {
        return step(id, new MailEvent.Finding(desk.now(), wentOut));
    }

    /** Notes that a mail came back. */
    public Validated<MailSheet> returned(String id, String why) {
        return said(why, "what came back says")
                .then(text -> step(id, new MailEvent.Bounce(desk.now(), text, Optional.empty())));
    }

    /** Sees to it that a mail does not go out. */
    public Validated<MailSheet> withdraw(String id, String reason) {
        return said(reason, "a reason, which the book keeps")
                .then(text -> step(id, new MailEvent.Withdrawal(desk.now(), text)));
    }

    private static Validated<String> said(String text, String allowed) {
        return text.isBlank()
                ? Validated
                        .invalid(new Problem(Code.MISSING, new Place("", 0, "reason"), "no reason is given", allowed))
                : Validated.valid(text.strip());
    }

    private Validated<MailSheet> step(String id, MailEvent event) {
        return book.write(open -> MailLife.of(open, id).then(mail -> step(open, mail, event))
                .map(mail -> sheet(open, mail)));
    }

    /** The mail after something happened. */
    Validated<MailLife> step(Transaction open, MailLife mail, MailEvent event) {
        return MailState.step(mail.state(), event).then(after -> {
            open.lifeSteps().add(mail.next(event, desk.today()));
            new ToldByMail(open, desk.today()).after(mail, event);
            return MailLife.of(open, mail.id());
        });
    }
}
