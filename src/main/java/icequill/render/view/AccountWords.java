package icequill.render.view;

import icequill.account.Movement;
import icequill.account.OpenCredit;
import icequill.account.Owed;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** How papers about an account name what stands on it. */
record AccountWords(Sentences sentences) {

    String named(Owed owed) {
        return sentences.word("account.invoice", owed.number());
    }

    String named(OpenCredit credit) {
        return credit.number().map(number -> sentences.word("account.credit-note", number))
                .orElseGet(() -> sentences.word("account.on-account"));
    }

    String named(Movement movement) {
        String number = String.join(", ", movement.numbers());
        return switch (movement.kind()) {
        case INVOICE -> sentences.word("account.invoice", number);
        case CREDIT_NOTE -> sentences.word("account.credit-note", number);
        case PAYMENT -> sentences.word("account.payment", number);
        case PART_ON_ACCOUNT -> sentences.word("account.payment-rest", number);
        case ON_ACCOUNT -> sentences.word("account.on-account");
        case EARLY_PAYMENT -> sentences.word("account.early-payment", number);
        case PAID_BACK -> sentences.word("account.paid-back", number);
        };
    }

    /** The customer's own reference, the invoice that a credit note corrects, or the tax of what was taken off; may be empty. */
    String reference(Movement movement) {
        return movement.tax().map(this::taxOf).orElseGet(() -> given(movement));
    }

    private String taxOf(MonetaryAmount tax) {
        return tax.isZero()
                ? sentences.word("account.early-tax-stays")
                : sentences.word("account.early-tax", amount(tax));
    }

    private String given(Movement movement) {
        return movement.reference().map(reference -> switch (movement.kind()) {
        case INVOICE -> purchaseOrder(reference);
        case CREDIT_NOTE -> sentences.word("account.corrects", reference);
        case PAYMENT, PART_ON_ACCOUNT, ON_ACCOUNT, EARLY_PAYMENT, PAID_BACK -> reference;
        }).orElse("");
    }

    /** Purchase order, how long past due, and what is disputed. */
    String state(Owed owed) {
        return joined(Stream.of(owed.purchaseOrder().map(this::purchaseOrder).stream(),
                Stream.of(owed).filter(Owed::isPastDue).map(this::daysLate),
                owed.disputed()
                        .map(part -> sentences.word("account.disputed", amount(part.amount()), part.reason()))
                        .stream()));
    }

    record StoreSum(String store, String amount) implements Texts {}

    /** What of a sum is for each of several stores, which a group's accounts office books apart; none where there is one. */
    List<StoreSum> byStore(List<Owed> all, Function<Owed, MonetaryAmount> part) {
        Map<String, List<MonetaryAmount>> stores = new TreeMap<>();
        all.forEach(owed -> stores.computeIfAbsent(owed.store().orElse(""), store -> new ArrayList<>())
                .add(part.apply(owed)));
        return stores.size() < 2
                ? List.of()
                : stores.entrySet().stream().map(each -> new StoreSum(
                        each.getKey().isEmpty()
                                ? sentences.word("account.no-store")
                                : sentences.word("account.of-store", each.getKey()),
                        amount(Amounts.sum(each.getValue(), each.getValue().getFirst().getCurrency()))))
                        .toList();
    }

    String purchaseOrder(String order) {
        return sentences.word("account.purchase-order", order);
    }

    String daysLate(Owed owed) {
        return sentences.say(Phrase.of("reason.late-days", Fact.number(owed.daysLate(), "day")));
    }

    /** What is left out because it is dated later; empty when nothing is. */
    String later(List<Movement> later) {
        return later.isEmpty()
                ? ""
                : sentences.word("account.later", later.stream().map(one -> named(one) + ", "
                        + sentences.formats().day(one.date()) + ", " + amount(one.amount()))
                        .collect(Collectors.joining("; ")));
    }

    String withCurrency(MonetaryAmount amount) {
        return amount.getCurrency().getCurrencyCode() + "\u00a0" + amount(amount);
    }

    String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
    }

    /** What there is of the parts, with semicolons between. */
    static String joined(Stream<Stream<String>> parts) {
        return parts.flatMap(part -> part).collect(Collectors.joining("; "));
    }
}
