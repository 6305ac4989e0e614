package icequill.office;

import icequill.answer.WrittenPaper;
import icequill.document.Paper;
import icequill.document.Reminder;
import icequill.office.writing.LooseMails;
import icequill.office.writing.PaperWriter;
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
    private final PaperWriter desk;

    private AccountOffice(ShopBook book) {
        this.book = book;
        this.desk = new PaperWriter(book);
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
        return account(name, options)
                .then(hand -> write(new AccountPapers(hand, language(hand, options)).statement(since),
                        "statement", hand, options));
    }

    /** Writes a reminder of what is past due on the options's date into papers/, in place of an earlier one of that date. */
    public Validated<WrittenPaper> reminder(FormName name, PaperOptions options, Reminder.Level level) {
        return account(name, options).then(hand -> new AccountPapers(hand, language(hand, options)).reminder(level)
                .then(reminder -> write(reminder, "reminder", hand, options)));
    }

    private Validated<AccountSnapshot> account(FormName name, PaperOptions options) {
        return new AccountLoader(book).of(name, options.date());
    }

    private static Language language(AccountSnapshot hand, PaperOptions options) {
        return options.language().or(hand::language).orElse(hand.shop().language());
    }

    private Validated<WrittenPaper> write(Paper paper, String kind, AccountSnapshot hand, PaperOptions options) {
        String name = kind + "-" + hand.customer() + "-" + options.date();
        return desk.write(paper, name, options.extras())
                .map(files -> WrittenPaper.of(files, paper, hand.billTo().name(), hand.notices()))
                .then(written -> options.extras().mail()
                        ? new LooseMails(book).about(written, paper, hand.customer(), Optional.empty())
                        : Validated.valid(written));
    }
}
