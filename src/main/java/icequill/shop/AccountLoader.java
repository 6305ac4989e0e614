package icequill.shop;

import icequill.account.AccountOf;
import icequill.account.AccountOf.Holder;
import icequill.account.AccountRules;
import icequill.account.ReminderTerms;
import icequill.account.Standing;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.papers.AccountSnapshot;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Checked;
import icequill.problem.Problems;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Reads the accounts of customers. */
public record AccountLoader(ShopFolder folder) {

    /** Reads one account; one report holds all that is wrong with it. */
    public Checked<AccountSnapshot> of(FormName name, LocalDate day) {
        Problems problems = new Problems();
        Optional<AccountSnapshot> hand = folder.form(name, List.of(FormKind.ACCOUNT))
                .flatMap(form -> read(form, day, problems));
        return GlyphCheck.report(folder, problems).or(hand::orElseThrow);
    }

    /**
     * The account as far as it could be read; empty where something is missing, which was reported.
     *
     * @param problems those are added here that the folder itself cannot know
     */
    public Optional<AccountSnapshot> read(Form form, LocalDate day, Problems problems) {
        return folder.account(form).flatMap(found -> switch (found.holder()) {
        case Holder.Named named ->
            hand(found, named.billTo(), named.language(), named.vendorNumber(), day);
        case Holder.Site at -> folder.site(at.id(), at.place()).flatMap(site -> ofSite(found, site, day,
                problems));
        });
    }

    private Optional<AccountSnapshot> ofSite(AccountOf account, Site site, LocalDate day,
            Problems problems) {
        return problems.take(site.billTo(day)).flatMap(billTo -> hand(account, billTo,
                site.customer().language(), site.customer().vendorNumber(), day));
    }

    /** An account that cannot be true has been reported, and is not worked out. */
    private Optional<AccountSnapshot> hand(AccountOf account, BillTo billTo,
            Optional<Language> language, Optional<String> vendorNumber, LocalDate day) {
        ReminderTerms terms = account.late().map(folder.reminders()::with).orElseGet(folder::reminders);
        return folder.shop().filter(shop -> AccountRules.problems(account.account()).isEmpty())
                .map(shop -> new AccountSnapshot(shop, billTo, language, vendorNumber, account,
                        Standing.of(account.account(), day), terms));
    }
}
