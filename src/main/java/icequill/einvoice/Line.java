package icequill.einvoice;

import icequill.document.InvoiceLine;
import icequill.explain.ConstantKey;
import icequill.explain.Phrase;
import icequill.work.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.money.MonetaryAmount;

/**
 * One line (BG-25).
 *
 * @param number from 1
 * @param note who pays, where the customer does not
 * @param place of the machine it was for
 * @param net BT-131
 * @param categories one, except in plain UBL, where each authority's part of a sales tax is one
 */
record Line(int number, Optional<String> note, PricedQuantity quantity, Optional<Adjustment> allowance,
        MonetaryAmount net, String name, Optional<String> place, List<Category> categories) {

    Line {
        categories = List.copyOf(categories);
    }

    static Line of(int number, InvoiceLine line, List<Category> categories, Function<Phrase, String> wording) {
        Optional<String> note = Optional.of(line.outcome()).filter(outcome -> !outcome.isCharged())
                .map(outcome -> wording.apply(word(outcome)));
        Optional<Adjustment> allowance = Optional.of(line.allowance()).filter(amount -> !amount.isZero())
                .map(amount -> Adjustment.allowance(amount, code(line.outcome()),
                        note.orElseGet(() -> reason(line, wording)), Optional.empty()));
        return new Line(number, note, PricedQuantity.of(line), allowance, line.net(), wording.apply(line.text()),
                line.machine(), categories);
    }

    private static Phrase word(Outcome outcome) {
        return Phrase.of("outcome." + ConstantKey.of(outcome));
    }

    /** The discount is the last thing that was taken off, so its reason is the last one. */
    private static String reason(InvoiceLine line, Function<Phrase, String> wording) {
        List<Phrase> reasons = line.how().reasons();
        return wording.apply(reasons.isEmpty() ? Phrase.of("table.discount") : reasons.getLast());
    }

    /** UNTDID 5189, as far as EN 16931 allows it; the list has no code for a warranty. */
    private static String code(Outcome outcome) {
        return switch (outcome) {
        case CHARGED -> Codes.DISCOUNT;
        case INCLUDED -> Codes.SPECIAL_AGREEMENT;
        case CALLBACK -> Codes.PRODUCTION_ERROR;
        case WARRANTY, GOODWILL -> Codes.SPECIAL_REBATE;
        case DECLINED -> throw new IllegalStateException("what was declined is not billed");
        };
    }
}
