package icequill.files.form;

import icequill.account.LateTerms;
import icequill.account.ReminderTerms;
import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.money.Percent;
import icequill.problem.Code;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;

/** Reads how a shop reminds, and what may be asked for paying late. */
public final class RemindersReader {

    private static final int MOST_PERCENT = 100;
    private static final int DAYS_OF_A_YEAR = 365;
    /** The first reminder is only a question, unless the shop says otherwise. */
    private static final int FROM_LEVEL = 2;

    private RemindersReader() {
    }

    /** The usual terms where shop.yaml says nothing else. */
    public static ReminderTerms read(Fields shop, CurrencyUnit currency) {
        return shop.child("reminders")
                .map(fields -> new ReminderTerms(fields.text("contact"), fields.text("phone"),
                        fields.integer("payWithin").orElse(ReminderTerms.USUAL.payWithin()),
                        fields.child("latePayment").flatMap(terms -> late(terms, currency))))
                .orElse(ReminderTerms.USUAL);
    }

    /** Empty when something is missing or wrong, or the rate is above its cap, which is then reported. */
    static Optional<LateTerms> late(Fields fields, CurrencyUnit currency) {
        Optional<Percent> rate = fields.percent("rate", MOST_PERCENT);
        Optional<Percent> cap = fields.percent("cap", MOST_PERCENT);
        if (rate.isEmpty() || cap.isEmpty()) {
            return Optional.empty();
        }
        if (rate.get().value().compareTo(cap.get().value()) > 0) {
            fields.problems().add(Code.OUT_OF_RANGE, fields.place("rate"), "a rate of "
                    + rate.get().value().toPlainString() + " %, above its cap",
                    "at most the cap of "
                            + cap.get().value().toPlainString() + " %");
            return Optional.empty();
        }
        return fields.wording("basis").map(basis -> new LateTerms(rate.get(), cap.get(),
                fields.integer("dayBase").filter(days -> days >= 360 && days <= 366).orElse(DAYS_OF_A_YEAR),
                fields.integer("graceDays").filter(days -> days >= 0).orElse(0),
                fields.integer("fromLevel").orElse(FROM_LEVEL), fixed(fields, currency), basis));
    }

    private static List<LateTerms.Fixed> fixed(Fields fields, CurrencyUnit currency) {
        return fields.children("fixed").stream()
                .flatMap(step -> Prices.charged(step, "from", currency)
                        .flatMap(from -> Prices.charged(step, "amount", currency)
                                .map(amount -> new LateTerms.Fixed(from, amount)))
                        .stream())
                .toList();
    }
}
