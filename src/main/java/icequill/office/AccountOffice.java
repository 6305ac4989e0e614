package icequill.office;

import icequill.answer.WrittenPaper;
import icequill.document.Paper;
import icequill.document.Reminder;
import icequill.office.letters.LooseMails;
import icequill.office.letters.LoosePaper;
import icequill.papers.AccountPapers;
import icequill.papers.AccountSnapshot;
import icequill.party.Language;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.AccountLoader;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The office where customers' accounts are looked after. Each call reads the shop folder anew, so that it always works with what
 * stands there now.
 */
public final class AccountOffice {

    private final ShopBook book;

    private AccountOffice(ShopBook book) {
        this.book = book;
    }

    public static AccountOffice of(ShopBook book) {
        return new AccountOffice(book);
    }

    /**
     * Writes what a customer owes at the end of the options's date into papers/, in place of an earlier one of that date.
     *
     * @param since the first day whose movements are listed; empty for the usual one
     */
    public Validated<WrittenPaper> statement(FormName name, PaperOptions options, Optional<LocalDate> since) {
        return statementOf(name, options, since).then(paper -> new LooseMails(book).write(paper, options.extras()));
    }

    /** The same paper, not written yet. */
    public Validated<LoosePaper> statementOf(FormName name, PaperOptions options, Optional<LocalDate> since) {
        return account(name, options).map(hand -> paper(
                new AccountPapers(hand, language(hand, options)).statement(since), "statement", hand, options));
    }

    /** Writes a reminder of what is past due on the options's date into papers/, in place of an earlier one of that date. */
    public Validated<WrittenPaper> reminder(FormName name, PaperOptions options, Reminder.Level level) {
        return reminderOf(name, options, level).then(paper -> new LooseMails(book).write(paper, options.extras()));
    }

    /** The same paper, not written yet. */
    public Validated<LoosePaper> reminderOf(FormName name, PaperOptions options, Reminder.Level level) {
        return account(name, options).then(hand -> new AccountPapers(hand, language(hand, options)).reminder(level)
                .map(reminder -> paper(reminder, "reminder", hand, options)));
    }

    private Validated<AccountSnapshot> account(FormName name, PaperOptions options) {
        return new AccountLoader(book).of(name, options.date());
    }

    private static Language language(AccountSnapshot hand, PaperOptions options) {
        return options.language().or(hand::language).orElse(hand.shop().language());
    }

    private static LoosePaper paper(Paper paper, String kind, AccountSnapshot hand, PaperOptions options) {
        return new LoosePaper(kind + "-" + hand.customer() + "-" + options.date(), paper,
                Optional.of(hand.customer()), Optional.empty(), hand.billTo().name(), hand.notices());
    }
}
