package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.rates.EarlyPaymentTerms;
import java.util.Optional;

/** Reads what is taken off for paying early, where a file says so. */
final class EarlyPaymentReader {

    /** More would be a price, and no term of payment. */
    private static final int MOST = 20;

    private EarlyPaymentReader() {
    }

    static Optional<EarlyPaymentTerms> read(Fields fields) {
        return fields.child("earlyPayment").flatMap(entry -> entry.percent("percent", MOST)
                .flatMap(percent -> entry.integer("days").flatMap(days -> entry
                        .constant("on", EarlyPaymentTerms.On.class)
                        .map(on -> new EarlyPaymentTerms(percent, days, on)))));
    }
}
