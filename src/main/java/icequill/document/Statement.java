package icequill.document;

import icequill.account.Ageing;
import icequill.account.Movement;
import icequill.account.OpenCredit;
import icequill.account.Owed;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a customer owes at the end of a day, and what led to it.
 *
 * @param vendorNumber the shop's number in the customer's books
 * @param owed invoices that are open; together with the credits they make the balance
 * @param credits that are not set off
 * @param balance negative when more is credited than owed
 * @param since the first day whose movements are listed
 * @param broughtForward the balance before that day
 * @param lines what happened from then on
 * @param later what does not count because it is dated after the day
 */
public record Statement(LocalDate date, Shop shop, Language language, PaperSize size, BillTo billTo,
        Optional<String> vendorNumber, List<Owed> owed, List<OpenCredit> credits, Ageing ageing,
        MonetaryAmount balance, LocalDate since, MonetaryAmount broughtForward, List<Line> lines,
        List<Movement> later) implements Paper {

    /**
     * Something that happened.
     *
     * @param balance after it
     */
    public record Line(Movement movement, MonetaryAmount balance) {}

    public Statement {
        owed = List.copyOf(owed);
        credits = List.copyOf(credits);
        lines = List.copyOf(lines);
        later = List.copyOf(later);
    }
}
