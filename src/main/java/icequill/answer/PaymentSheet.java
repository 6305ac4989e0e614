package icequill.answer;

import icequill.account.Allotment;
import icequill.files.answer.Sheet;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.Withdrawal;
import icequill.money.Amounts;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A payment that the book has.
 *
 * @param reason why it was taken to be for its bills; empty where that was said, or is not known any more
 * @param withdrawal empty while it stands
 */
public record PaymentSheet(PaymentEntry payment, Optional<Allotment.Reason> reason, Optional<Withdrawal> withdrawal)
        implements Sheet {

    /** The heads of {@link #row}. */
    public static final List<String> HEAD = List.of("id", "date", "customer", "for", "reference", "amount",
            "on account");

    /** What of it is for no bill. */
    public MonetaryAmount onAccount() {
        return payment.amount().subtract(Amounts.sum(payment.shares().stream().map(PaymentEntry.Share::amount).toList(),
                payment.amount().getCurrency()));
    }

    /** Id, date, customer, bills, reference, amount, what is on account; money that went back is negative. */
    public List<String> row() {
        MonetaryAmount amount = payment.isBack() ? payment.amount().negate() : payment.amount();
        return List.of(payment.id(), payment.day().toString(), payment.customer(),
                withdrawal.isPresent()
                        ? "(withdrawn)"
                        : String.join(" ", payment.shares().stream().map(PaymentEntry.Share::bill).toList()),
                payment.reference().orElse(""), Amounts.plain(amount),
                withdrawal.isPresent() ? "" : Amounts.plain(onAccount()));
    }

    /** In words, a line for each bill. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Payment " + payment.id() + ": " + payment.amount().getCurrency().getCurrencyCode() + " "
                + Amounts.plain(payment.amount()) + (payment.isBack() ? " back to " : " of ") + payment.customer()
                + ", " + payment.day() + ", " + way() + payment.reference().map(text -> ", " + text).orElse(""));
        payment.shares().forEach(share -> lines.add("  " + share.bill() + ": " + Amounts.plain(share.amount())
                + (share.day().equals(payment.day()) ? "" : " from " + share.day())));
        if (onAccount().isPositive()) {
            lines.add("  on account: " + Amounts.plain(onAccount()));
        }
        reason.ifPresent(why -> lines.add("  " + switch (why) {
        case NAMED -> "for what the reference names";
        case EXACT_SUM -> "for what comes to it exactly";
        case LONGEST_DUE -> "for what is longest due";
        case NOTHING_OPEN -> "nothing was open that it could be for";
        }));
        withdrawal.ifPresent(back -> lines.add("  withdrawn on " + back.at() + ": " + back.reason()));
        return lines;
    }

    private String way() {
        return payment.way().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * What JSON shows of it.
     *
     * @param way as forms call it, such as bank-transfer
     * @param isBack whether the shop paid, and not the customer
     * @param allotted the bills that it is for
     * @param onAccount what of it is for no bill
     */
    public record Payment(String id, String customer, LocalDate date, MonetaryAmount amount, String way,
            boolean isBack, Optional<String> reference, List<Share> allotted, MonetaryAmount onAccount,
            Optional<Allotment.Reason> reason, Optional<Withdrawn> withdrawn) {}

    /**
     * What of a payment is for one bill.
     *
     * @param number of the bill
     * @param from the day on which it counts
     */
    public record Share(String number, MonetaryAmount amount, LocalDate from) {}

    /** When, and why. */
    public record Withdrawn(Instant at, String reason) {}

    @Override
    public Payment data() {
        return new Payment(payment.id(), payment.customer(), payment.day(), payment.amount(), way(), payment.isBack(),
                payment.reference(), payment.shares().stream()
                        .map(share -> new Share(share.bill(), share.amount(), share.day())).toList(),
                onAccount(), reason, withdrawal.map(back -> new Withdrawn(back.at(), back.reason())));
    }
}
