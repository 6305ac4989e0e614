package icequill.office.billing;

import icequill.account.Allotment;
import icequill.account.Invoiced;
import icequill.account.NamedShares;
import icequill.account.NamedShares.Open;
import icequill.account.OpenCredit;
import icequill.account.Owed;
import icequill.account.Payment;
import icequill.account.PaymentRequest;
import icequill.account.PaymentRequest.Named;
import icequill.account.Standing;
import icequill.answer.BookedPaper;
import icequill.ledger.Reading;
import icequill.ledger.entries.PaymentEntry.Share;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.BookAccounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Shares payments out over the bills of an account that are open, whatever the day of each. */
record PaymentShares(BookAccounts.Found account, Reading book) {

    /** What a payment is for, and why. */
    record Shared(List<Payment.Share> shares, Optional<Allotment.Reason> reason) {

        List<Share> entries() {
            return shares.stream().map(share -> new Share(share.number(), share.day(), share.amount())).toList();
        }
    }

    Validated<Shared> of(PaymentRequest wish) {
        Standing standing = Standing.of(account.account(), LocalDate.MAX);
        return wish.isBack() ? back(standing.credits(), wish) : in(standing.owed(), wish.amount(), wish);
    }

    /** The shares of what a payment that came in has on account. */
    Validated<Shared> of(MonetaryAmount left, PaymentRequest wish) {
        return in(Standing.of(account.account(), LocalDate.MAX).owed(), left, wish);
    }

    private Validated<Shared> in(List<Owed> owed, MonetaryAmount amount, PaymentRequest wish) {
        if (wish.bills().isEmpty()) {
            Allotment allotment = Allotment.of(amount, wish.day(), wish.reference(), owed);
            return Validated.valid(new Shared(allotment.shares(), Optional.of(allotment.reason())));
        }
        Map<String, Open> bills = new LinkedHashMap<>();
        owed.forEach(one -> bills.put(one.number(), new Open(one.date(), one.open())));
        return new NamedShares(amount, wish.day(), bills,
                named -> notOpen(bills.keySet().stream().toList(), named, PaperKind.INVOICE))
                .of(wish.bills().get(), wish.place()).map(shares -> new Shared(shares, Optional.empty()));
    }

    /** All that goes back is for credit notes, the oldest first where none is named. */
    private Validated<Shared> back(List<OpenCredit> credits, PaymentRequest wish) {
        Map<String, Open> notes = new LinkedHashMap<>();
        credits.forEach(credit -> credit.number()
                .ifPresent(number -> notes.put(number, new Open(credit.date(), credit.open()))));
        List<Named> named = wish.bills().orElseGet(() -> inTurn(notes, wish));
        return new NamedShares(wish.amount(), wish.day(), notes,
                one -> notOpen(notes.keySet().stream().toList(), one, PaperKind.CREDIT_NOTE))
                .of(named, wish.place()).then(shares -> {
                    MonetaryAmount left = wish.amount().subtract(Amounts.sum(
                            shares.stream().map(Payment.Share::amount).toList(), wish.amount().getCurrency()));
                    return left.isZero()
                            ? Validated.valid(new Shared(shares, Optional.empty()))
                            : Validated.invalid(new Problem(Code.OUT_OF_RANGE, wish.place(),
                                    Amounts.plain(left) + " of "
                                            + Amounts.plain(wish.amount()) + " paid back is for no credit note",
                                    "what credit notes leave to be paid back, and no more"));
                });
    }

    private static List<Named> inTurn(Map<String, Open> notes, PaymentRequest wish) {
        List<Named> named = new ArrayList<>();
        MonetaryAmount left = wish.amount();
        for (Map.Entry<String, Open> note : notes.entrySet()) {
            if (left.isPositive()) {
                named.add(new Named(note.getKey(), Optional.empty(), Optional.empty(), wish.place()));
                left = left.subtract(note.getValue().amount());
            }
        }
        return named;
    }

    /** Why a bill cannot be paid. */
    private Problem notOpen(List<String> open, Named named, PaperKind kind) {
        String number = named.number();
        String wanted = "a bill of \"" + account.payer().id() + "\" that is open";
        Optional<IssuedPaper> paper = book.papers().show(number).found();
        Optional<String> why = paper.filter(found -> found.series().kind() != kind)
                .map(found -> "it is no " + BookedPaper.words(kind))
                .or(() -> paper.filter(found -> !isOf(found))
                        .map(found -> "it is for customer \"" + found.origin().customer().orElse("") + "\""))
                .or(() -> paper.flatMap(IssuedPaper::gross)
                        .filter(sum -> !sum.getCurrency().equals(account.account().currency()))
                        .map(sum -> "it is in " + sum.getCurrency().getCurrencyCode()))
                .or(() -> paper.isPresent() || isEarlier(number)
                        ? Optional.of("nothing of it is open")
                        : Optional.empty());
        return why.map(reason -> new Problem(Code.NOT_ALLOWED, named.place(), number + " cannot be paid: " + reason,
                open.isEmpty() ? wanted : wanted + ": " + String.join(", ", open)))
                .orElseGet(() -> Problem.unknownName(named.place(), "open bill of \"" + account.payer().id() + "\"",
                        number, open));
    }

    private boolean isOf(IssuedPaper paper) {
        List<String> together = book.accounts().together(account.payer().id());
        return paper.origin().customer().filter(together::contains).isPresent();
    }

    private boolean isEarlier(String number) {
        return account.account().invoices().stream().map(Invoiced::number).anyMatch(number::equals);
    }
}
