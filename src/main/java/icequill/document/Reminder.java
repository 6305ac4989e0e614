package icequill.document;

import icequill.account.Claims;
import icequill.account.Movement;
import icequill.money.Percent;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.party.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A polite letter about invoices that are past due.
 *
 * @param vendorNumber the shop's number in the customer's books
 * @param earlier days of reminders before this one
 * @param by the last day to pay what is asked for
 * @param late empty where nothing is asked for paying late
 * @param later what does not count because it is dated after the day
 */
public record Reminder(LocalDate date, Shop shop, Language language, PaperSize size, BillTo billTo,
        Optional<String> vendorNumber, Level level, List<LocalDate> earlier, LocalDate by, Claims claims,
        Optional<Late> late, Contact contact, List<Movement> later) implements Paper {

    /** How often was asked: each is still polite, the last says that it is the last. */
    public enum Level {
        FIRST(1), SECOND(2), LAST(3);

        private final int number;

        Level(int number) {
            this.number = number;
        }

        /** From 1, as offices count them. */
        public int number() {
            return number;
        }
    }

    /**
     * Terms for paying late.
     *
     * @param rate simple interest a year
     * @param basis why it may be asked
     */
    public record Late(Percent rate, Wording basis) {}

    /** Whom to call. */
    public record Contact(Optional<String> name, String phone) {}

    public Reminder {
        earlier = List.copyOf(earlier);
        later = List.copyOf(later);
    }
}
