package icequill.answer;

import icequill.account.Allotment;
import icequill.explain.ConstantKey;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.Withdrawal;
import icequill.money.Amounts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A payment that the book has.
 *
 * @param reason why it was taken to be for its bills; empty where that was said, or is not known any more
 * @param withdrawal empty while it stands
 */
public record PaymentSheet(PaymentEntry payment, Optional<Allotment.Reason> reason, Optional<Withdrawal> withdrawal) {

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

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("id", payment.id());
        view.put("customer", payment.customer());
        view.put("date", payment.day().toString());
        view.put("currency", payment.amount().getCurrency().getCurrencyCode());
        view.put("amount", Amounts.plain(payment.amount()));
        view.put("way", way());
        view.put("back", payment.isBack());
        payment.reference().ifPresent(text -> view.put("reference", text));
        view.put("for", payment.shares().stream().map(share -> Map.of("number", share.bill(), "amount",
                Amounts.plain(share.amount()), "from", share.day().toString())).toList());
        view.put("onAccount", Amounts.plain(onAccount()));
        reason.ifPresent(why -> view.put("reason", ConstantKey.of(why)));
        withdrawal.ifPresent(back -> view.put("withdrawn",
                Map.of("at", back.at().toString(), "reason", back.reason())));
        return view;
    }
}
