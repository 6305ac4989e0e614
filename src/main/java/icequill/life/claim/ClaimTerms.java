package icequill.life.claim;

import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What is claimed of whom.
 *
 * @param visit by id
 * @param payer as the machine names him; empty where nobody recorded one
 * @param work that was done under the warranty, in words
 * @param listed what it would have cost the customer, before tax
 * @param allowed what the payer's rules pay of it
 * @param how that was figured, in words
 * @param sendBy the last day to send it; empty where no rule is known
 * @param returnBy the last day to return what failed; empty where it is not asked for
 */
public record ClaimTerms(String visit, String payer, String work, MonetaryAmount listed, MonetaryAmount allowed,
        String how, Optional<LocalDate> sendBy, Optional<LocalDate> returnBy) {}
