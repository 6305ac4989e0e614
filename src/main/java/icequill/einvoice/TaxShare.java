package icequill.einvoice;

import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What is taxed in one way, and how much (BG-23).
 *
 * @param reason why no tax is due, in words
 * @param reasonCode the same by the VATEX list
 */
record TaxShare(Category category, MonetaryAmount base, MonetaryAmount tax, Optional<String> reason,
        Optional<String> reasonCode) {}
