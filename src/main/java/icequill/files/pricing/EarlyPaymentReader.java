package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.problem.Code;
import icequill.rates.EarlyPaymentTerms;
import java.util.Optional;

/** Reads what is taken off for paying early, where a file says so. */
final class EarlyPaymentReader {

    /** More would be a price, and no term of payment. */
    private static final int MOST = 20;

    private EarlyPaymentReader() {
    }

    /**
     * The shop's terms, which nobody could use after the day on which his invoice is due.
     *
     * @param due days from an invoice to that day
     */
    static Optional<EarlyPaymentTerms> read(Fields fields, int due) {
        Optional<EarlyPaymentTerms> terms = read(fields);
        terms.filter(early -> !early.percent().isZero() && early.days() > due)
                .ifPresent(early -> fields.problems().add(Code.OUT_OF_RANGE,
                        fields.child("earlyPayment").orElseThrow().place("days"),
                        "early is within " + early.days() + " days, but an invoice is due after " + due,
                        "at most " + due + ", or more paymentDays in shop.yaml"));
        return terms;
    }

    static Optional<EarlyPaymentTerms> read(Fields fields) {
        return fields.child("earlyPayment").flatMap(entry -> entry.percent("percent", MOST)
                .flatMap(percent -> entry.integer("days").flatMap(days -> entry
                        .constant("on", EarlyPaymentTerms.On.class)
                        .map(on -> new EarlyPaymentTerms(percent, days, on)))));
    }
}
