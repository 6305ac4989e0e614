package icequill.answer.amounts;

import icequill.document.CreditNote;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.document.Reminder;
import icequill.document.RenewalNotice;
import icequill.document.RepairQuote;
import icequill.document.ServiceAgreement;
import icequill.document.Statement;
import icequill.render.words.Sentences;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Every amount that a paper has, by name. What a credit gives back is negative here, whatever sign it has on paper. */
public sealed interface PaperAmounts permits PricedAmounts, MaintenanceAmounts, AgreementAmounts, RenewalAmounts,
        StatementAmounts, ReminderAmounts {

    /** Empty for a paper whose figures have a form of their own, or that has none. */
    static Optional<PaperAmounts> of(Paper paper) {
        Sentences sentences = Sentences.of(paper.language(), paper.shop().address().country());
        return switch (paper) {
        case CreditNote credit -> Optional.of(PricedAmounts.of(credit, MonetaryAmount::negate, sentences));
        case RepairQuote quote ->
            Optional.of(PricedAmounts.of(quote, amount -> amount, sentences).paidAs(quote));
        case PricedPaper priced -> Optional.of(PricedAmounts.of(priced, amount -> amount, sentences));
        case MaintenanceQuote quote -> Optional.of(MaintenanceAmounts.of(quote, sentences));
        case ServiceAgreement agreement -> Optional.of(AgreementAmounts.of(agreement));
        case RenewalNotice notice -> Optional.of(new RenewalAmounts(notice.price().old(), notice.price().price(),
                notice.price().difference()));
        case Statement statement -> Optional.of(StatementAmounts.of(statement));
        case Reminder reminder -> Optional.of(ReminderAmounts.of(reminder));
        default -> Optional.empty();
        };
    }
}
