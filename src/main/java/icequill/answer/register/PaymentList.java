package icequill.answer.register;

import icequill.answer.Listing;
import icequill.answer.PaymentSheet;
import java.util.List;

/** Payments of the book. */
public record PaymentList(List<PaymentSheet> payments) implements Listing {

    public PaymentList {
        payments = List.copyOf(payments);
    }

    /** Only those that hold the text somewhere, in capitals or not. */
    public PaymentList with(String text) {
        return new PaymentList(payments.stream().filter(one -> Listing.holds(one.row(), text)).toList());
    }

    @Override
    public List<String> head() {
        return PaymentSheet.HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return payments.stream().map(PaymentSheet::row).toList();
    }
}
