package icequill.account;

import icequill.money.Amounts;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * What payments and credits settle by the end of a day: a payment the invoice it is for, with what is taken off for paying early; a
 * credit note the invoice it corrects as far as payments left it open, earlier credit notes first.
 *
 * @param credited what credit notes took off each invoice, by its number
 * @param used what of each credit note was set off, by its number
 */
record Settlement(Account account, LocalDate day, Map<String, MonetaryAmount> credited,
        Map<String, MonetaryAmount> used) {

    static Settlement of(Account account, LocalDate day) {
        Settlement settlement = new Settlement(account, day, new HashMap<>(), new HashMap<>());
        account.credits().stream().filter(credit -> settlement.counts(credit.date()))
                .sorted(Comparator.comparing(Credited::date)).forEach(settlement::setOff);
        return settlement;
    }

    /** Invoices that are not wholly settled, by due day, those of one day by their order. */
    List<Owed> owed() {
        return account.invoices().stream().filter(invoice -> counts(invoice.date())).map(this::owed)
                .filter(owed -> owed.open().isPositive()).sorted(Comparator.comparing(Owed::due)).toList();
    }

    /** Credit notes and payments on account that are not set off, by date. */
    List<OpenCredit> credits() {
        Stream<OpenCredit> notes = account.credits().stream().filter(credit -> counts(credit.date()))
                .map(credit -> new OpenCredit(Optional.of(credit.number()), credit.date(), left(credit)))
                .filter(credit -> credit.open().isPositive());
        Stream<OpenCredit> payments = account.payments().stream().filter(payment -> counts(payment.date()))
                .map(payment -> new OpenCredit(Optional.empty(), payment.date(), payment.onAccount(day)))
                .filter(credit -> credit.open().isPositive());
        return Stream.concat(notes, payments).sorted(Comparator.comparing(OpenCredit::date)).toList();
    }

    private boolean counts(LocalDate date) {
        return !date.isAfter(day);
    }

    private void setOff(Credited credit) {
        account.invoices().stream().filter(invoice -> credit.corrects().equals(Optional.of(invoice.number())))
                .forEach(invoice -> {
                    MonetaryAmount room = owed(invoice).open();
                    MonetaryAmount left = left(credit);
                    MonetaryAmount taken = left.isGreaterThan(room) ? room : left;
                    credited.merge(invoice.number(), taken, MonetaryAmount::add);
                    used.put(credit.number(), taken);
                });
    }

    private Owed owed(Invoiced invoice) {
        MonetaryAmount paid = paid(invoice.number());
        MonetaryAmount off = credited.getOrDefault(invoice.number(), Amounts.zero(account.currency()));
        Optional<MonetaryAmount> early = EarlyDiscount.of(account, invoice)
                .filter(discount -> counts(discount.day())).map(EarlyDiscount::amount);
        MonetaryAmount open = early.map(discount -> invoice.total().subtract(discount)).orElse(invoice.total())
                .subtract(paid).subtract(off);
        return new Owed(invoice.number(), invoice.date(), invoice.due(), invoice.purchaseOrder(), invoice.store(),
                invoice.total(),
                paid, off, open, ChronoUnit.DAYS.between(invoice.due(), day),
                invoice.dispute().map(dispute -> disputed(dispute, open)),
                invoice.early().map(offer -> new Owed.Offer(offer.until(),
                        EarlyDiscount.enough(offer, account, invoice, day))).filter(offer -> offer.sum().isPositive()));
    }

    private static Owed.Disputed disputed(Invoiced.Dispute dispute, MonetaryAmount open) {
        MonetaryAmount part = dispute.amount().filter(amount -> amount.isLessThan(open)).orElse(open);
        return new Owed.Disputed(part, dispute.reason());
    }

    private MonetaryAmount left(Credited credit) {
        return credit.total().subtract(paidBack(credit))
                .subtract(used.getOrDefault(credit.number(), Amounts.zero(account.currency())));
    }

    private MonetaryAmount paid(String invoice) {
        return Amounts.sum(account.payments().stream().filter(payment -> counts(payment.date()))
                .flatMap(payment -> payment.counting(day)).filter(share -> share.number().equals(invoice))
                .map(Payment.Share::amount).toList(), account.currency());
    }

    private MonetaryAmount paidBack(Credited credit) {
        return Amounts.sum(credit.paidBack().stream().filter(back -> counts(back.date())).map(PaidBack::amount)
                .toList(), account.currency());
    }
}
