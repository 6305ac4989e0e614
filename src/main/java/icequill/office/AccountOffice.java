package icequill.office;

import icequill.document.Paper;
import icequill.document.Reminder;
import icequill.party.Language;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The office where customers' accounts are looked after. Each call reads the shop folder anew, so that it always works with what
 * stands there now.
 */
public final class AccountOffice {

    private final Path folder;
    private final PaperDesk desk;

    private AccountOffice(Path folder) {
        this.folder = folder;
        this.desk = new PaperDesk(folder);
    }

    static AccountOffice of(Path folder) {
        return new AccountOffice(folder);
    }

    /**
     * Writes what a customer owes at the end of the wish's date into papers/, in place of an earlier one of that date.
     *
     * @param since the first day whose movements are listed; empty for the usual one
     */
    public Checked<WrittenPaper> statement(Path file, Office.Wish wish, Optional<LocalDate> since) {
        return account(file, wish).then(hand -> write(new AccountPapers(hand, language(hand, wish)).statement(since),
                "statement", hand, wish));
    }

    /** Writes a reminder of what is past due on the wish's date into papers/, in place of an earlier one of that date. */
    public Checked<WrittenPaper> reminder(Path file, Office.Wish wish, Reminder.Level level) {
        return account(file, wish).then(hand -> new AccountPapers(hand, language(hand, wish)).reminder(level)
                .then(reminder -> write(reminder, "reminder", hand, wish)));
    }

    private Checked<AccountInHand> account(Path file, Office.Wish wish) {
        return Office.unnumbered(wish)
                .then(sound -> AccountInHand.of(BookSites.shop(folder), file, wish.date()));
    }

    private static Language language(AccountInHand hand, Office.Wish wish) {
        return wish.language().or(hand::language).orElse(hand.shop().language());
    }

    private Checked<WrittenPaper> write(Paper paper, String kind, AccountInHand hand, Office.Wish wish) {
        String name = kind + "-" + hand.account().id() + "-" + wish.date();
        return desk.write(paper, name, wish.extras(), true).map(files -> WrittenPaper.of(files, paper,
                hand.billTo().name(), hand.notices()));
    }
}
