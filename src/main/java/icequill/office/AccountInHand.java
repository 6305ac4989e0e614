package icequill.office;

import icequill.account.AccountOf;
import icequill.account.AccountOf.Holder;
import icequill.account.AccountRules;
import icequill.account.Movement;
import icequill.account.ReminderTerms;
import icequill.account.Standing;
import icequill.files.ShopFolder;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A customer's account that was read, as it stands at the end of a day, with everything that goes into its papers.
 *
 * @param language the customer's; empty for the shop's
 */
record AccountInHand(Shop shop, BillTo billTo, Optional<Language> language, Optional<String> vendorNumber,
        AccountOf account, Standing standing, ReminderTerms terms) {

    /** Reads one account; one report holds all that is wrong with it. */
    static Checked<AccountInHand> of(ShopFolder folder, Path file, LocalDate day) {
        Problems problems = new Problems();
        Optional<AccountInHand> hand = read(folder, file, day, problems);
        return VisitInHand.report(folder, problems).or(hand::orElseThrow);
    }

    /**
     * The account as far as it could be read; empty where something is missing, which was reported.
     *
     * @param problems those are added here that the folder itself cannot know
     */
    static Optional<AccountInHand> read(ShopFolder folder, Path file, LocalDate day, Problems problems) {
        return folder.account(file).flatMap(found -> switch (found.holder()) {
        case Holder.Named named ->
            hand(folder, found, named.billTo(), named.language(), named.vendorNumber(), day);
        case Holder.Site at -> folder.site(at.id(), at.place()).flatMap(site -> ofSite(folder, found, site, day,
                problems));
        });
    }

    private static Optional<AccountInHand> ofSite(ShopFolder folder, AccountOf account, Site site, LocalDate day,
            Problems problems) {
        return problems.take(site.billTo(day)).flatMap(billTo -> hand(folder, account, billTo,
                site.customer().language(), site.customer().vendorNumber(), day));
    }

    /** An account that cannot be true has been reported, and is not worked out. */
    private static Optional<AccountInHand> hand(ShopFolder folder, AccountOf account, BillTo billTo,
            Optional<Language> language, Optional<String> vendorNumber, LocalDate day) {
        ReminderTerms terms = account.late().map(folder.reminders()::with).orElseGet(folder::reminders);
        return folder.shop().filter(shop -> AccountRules.problems(account.account()).isEmpty())
                .map(shop -> new AccountInHand(shop, billTo, language, vendorNumber, account,
                        Standing.of(account.account(), day), terms));
    }

    /** What was left out because it is dated after the day. */
    List<Problem> notices() {
        return standing.later().stream().map(this::leftOut).toList();
    }

    private Problem leftOut(Movement later) {
        return new Problem(Code.WRONG_ORDER, later.place(),
                Amounts.plain(later.amount()) + " dated " + later.date() + " is left out", "up to " + standing.day());
    }
}
