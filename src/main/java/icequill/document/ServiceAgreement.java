package icequill.document;

import icequill.agreement.Acceptance;
import icequill.agreement.Billing;
import icequill.agreement.Installment;
import icequill.agreement.PaymentChange.GivenBack;
import icequill.agreement.Proration;
import icequill.agreement.RenewalTerms;
import icequill.agreement.Tier;
import icequill.agreement.VisitCalendar;
import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Shop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A maintenance agreement, with a summary of one page first.
 *
 * @param accepted empty while it is only drafted
 * @param machines at its beginning
 * @param calendar of the whole term
 * @param work what is done on each visit; that of the first year
 * @param yearPrice before tax
 * @param how the year's price was figured, or where it comes from
 * @param termPrice of the whole term, before tax
 * @param payments that it is divided into, as they are after all changes
 * @param billing empty where each visit is billed when it is done
 * @param calls what calls beside the plan cost, for every labor band
 * @param cancelDays of notice by which the customer may end it within the term
 * @param purchaseOrder that stands for all that it bills
 * @param refund what is paid back then; empty where each visit is billed when it is done
 */
public record ServiceAgreement(String number, LocalDate date, Optional<Acceptance> accepted, Shop shop,
        Language language, PaperSize size, BillTo billTo, Optional<String> vendorNumber, Where where,
        List<Machine> machines, Tier tier, VisitCalendar calendar, List<PlanYear.SlotWork> work,
        MonetaryAmount yearPrice, Explanation how, MonetaryAmount termPrice, List<Installment> payments,
        Optional<Billing> billing, List<CallCharge> calls, RenewalTerms terms, int cancelDays,
        Optional<RefundClause> refund, Optional<String> purchaseOrder,
        List<Change> changes, List<Phrase> remarks) implements Paper {

    /**
     * Machines added or removed in mid-term.
     *
     * @param yearDifference what a year costs more with it; negative when less
     * @param price what it adds to this term
     * @param minutes by which it was priced, and where they come from
     * @param givenBack by credit notes, of payments
     */
    public record Change(List<String> added, List<String> removed, MonetaryAmount yearDifference, Proration price,
            List<Phrase> minutes, List<GivenBack> givenBack) {
        public Change {
            added = List.copyOf(added);
            removed = List.copyOf(removed);
            minutes = List.copyOf(minutes);
            givenBack = List.copyOf(givenBack);
        }
    }

    public ServiceAgreement {
        machines = List.copyOf(machines);
        work = List.copyOf(work);
        payments = List.copyOf(payments);
        calls = List.copyOf(calls);
        changes = List.copyOf(changes);
        remarks = List.copyOf(remarks);
    }
}
