package icequill.papers;

import icequill.account.Movement;
import icequill.account.ReminderTerms;
import icequill.account.Standing;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A customer's account as it stands at the end of a day, with everything that goes into its papers.
 *
 * @param language the customer's; empty for the shop's
 * @param customer by id, by which its papers are filed
 * @param reminded days of earlier reminders
 * @param apart papers and payments in another currency
 */
public record AccountSnapshot(Shop shop, BillTo billTo, Optional<Language> language, Optional<String> vendorNumber,
        String customer, List<LocalDate> reminded, Standing standing, ReminderTerms terms, List<String> apart) {

    public AccountSnapshot {
        reminded = List.copyOf(reminded);
        apart = List.copyOf(apart);
    }

    /** What was left out: because it is dated after the day, or in another currency. */
    public List<Problem> notices() {
        return Stream.concat(standing.later().stream().map(this::leftOut),
                apart.stream().map(name -> new Problem(Code.NOT_ALLOWED, Place.ofFile(name),
                        "it is in another currency, and left out", shop.currency().getCurrencyCode())))
                .toList();
    }

    private Problem leftOut(Movement later) {
        return new Problem(Code.WRONG_ORDER, later.place(),
                Amounts.plain(later.amount()) + " dated " + later.date() + " is left out", "up to " + standing.day());
    }
}
