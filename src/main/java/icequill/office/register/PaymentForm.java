package icequill.office.register;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import icequill.ledger.entries.PaymentEntry;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * A payment by the keys of its form, in their order.
 *
 * @param back true, or not there
 * @param onAccount true where it is for no bill, or not there
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
record PaymentForm(String customer, LocalDate date, BigDecimal amount, CurrencyUnit currency, String way,
        Optional<String> reference, Optional<Boolean> back, Optional<Boolean> onAccount,
        @JsonProperty("for") List<Share> shares) {

    record Share(String number, BigDecimal amount, LocalDate from) {}

    static PaymentForm of(PaymentEntry entry) {
        return new PaymentForm(entry.customer(), entry.day(), number(entry.amount()), entry.amount().getCurrency(),
                entry.way().toLowerCase(Locale.ROOT).replace('_', '-'), entry.reference(),
                Optional.of(true).filter(said -> entry.isBack()),
                Optional.of(true).filter(said -> entry.shares().isEmpty()),
                entry.shares().stream().map(share -> new Share(share.bill(), number(share.amount()), share.day()))
                        .toList());
    }

    private static BigDecimal number(MonetaryAmount amount) {
        return new BigDecimal(Amounts.plain(amount));
    }
}
