package icequill.web;

import icequill.office.billing.Booking;
import icequill.office.billing.CreditOptions;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.CreditPart;
import icequill.web.page.Asked;
import icequill.web.page.TypedNumber;
import java.util.List;
import java.util.Optional;

/** What somebody ticked and typed on the pages that give an invoice back, or issue it anew. */
record CreditForm(Asked asked) {

    private static final Booking TRIAL = new Booking(Optional.empty(), false, true);

    /** Some lines or all, or a part of them. */
    Validated<CreditOptions> credit(boolean isTrial) {
        Problems problems = reason();
        Optional<CreditPart> part = asked.text("amount")
                .flatMap(text -> problems.take(TypedNumber.of(text, "amount")))
                .map(CreditPart.OfAmount::new);
        return problems.or(() -> options(lines(), part.orElse(CreditPart.Rest.REST), Optional.empty(), isTrial));
    }

    /** The whole, and the same invoice with another purchase order or for another customer. */
    Validated<CreditOptions> reissue(boolean isTrial) {
        CreditOptions.Due due = asked.text("due").filter("restart"::equals).isPresent()
                ? CreditOptions.Due.RESTART
                : CreditOptions.Due.KEEP;
        return reason().or(() -> options(List.of(), CreditPart.Rest.REST,
                Optional.of(new CreditOptions.Reissue(asked.text("purchaseOrder"), asked.text("billTo"), due)),
                isTrial));
    }

    private Problems reason() {
        Problems problems = new Problems();
        CreditOptions.tooLong(asked.text("reason").orElse(""), new Place("", 0, "reason")).ifPresent(problems::add);
        return problems;
    }

    private List<Integer> lines() {
        return asked.texts("line").stream().filter(text -> text.matches("\\d{1,4}")).map(Integer::valueOf).toList();
    }

    private CreditOptions options(List<Integer> lines, CreditPart part, Optional<CreditOptions.Reissue> reissue,
            boolean isTrial) {
        return new CreditOptions(lines, part, asked.text("reason").orElse(""), asked.reader().today(), reissue,
                isTrial ? TRIAL : Booking.USUAL);
    }
}
