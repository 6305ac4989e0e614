package icequill.document;

import icequill.agreement.Acceptance;
import icequill.agreement.Billing;
import icequill.agreement.Earning;
import icequill.agreement.Installment;
import icequill.agreement.PaymentChange.GivenBack;
import icequill.agreement.PlannedVisit;
import icequill.agreement.Proration;
import icequill.agreement.Refund;
import icequill.agreement.RenewalTerms;
import icequill.agreement.RestOfTerm;
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
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A maintenance agreement, with a summary of one page first.
 *
 * @param sites at least one
 * @param accepted empty while it is only drafted
 * @param yearPrice before tax
 * @param how the year's price was figured, or where it comes from
 * @param termPrice of the whole term, before tax
 * @param payments that it is divided into, as they are after all changes
 * @param billing empty where each visit is billed when it is done
 * @param cancelDays of notice by which the customer may end it within the term
 * @param purchaseOrder that stands for all that it bills
 * @param refund what is paid back then; empty where each visit is billed when it is done
 * @param rest present where a new owner took over the rest of another agreement's term; at its first site
 */
public record ServiceAgreement(String number, LocalDate date, Optional<Acceptance> accepted, Shop shop,
        Language language, PaperSize size, BillTo billTo, Optional<String> vendorNumber,
        List<CareAt> sites, Tier tier, MonetaryAmount yearPrice, Explanation how, MonetaryAmount termPrice,
        List<Installment> payments,
        Optional<Billing> billing, RenewalTerms terms, int cancelDays,
        Optional<RefundClause> refund, Optional<String> purchaseOrder, Optional<RestOfTerm> rest,
        List<Phrase> remarks) implements Paper {

    /**
     * How an agreement that ends early is settled, with an example.
     *
     * @param example the last day in the example
     * @param backThen what would be given back, had all payments due by that day been made, and all visits due by then
     */
    public record RefundClause(Earning earning, LocalDate example, Refund backThen) {}

    /**
     * What is agreed for one of the sites.
     *
     * @param machines at its beginning
     * @param from the day on which it comes in, in mid-term; empty where it is in from the beginning
     * @param until its last day, in mid-term; empty where it stays
     * @param calendar of the whole term
     * @param work what is done on each visit; that of the first year
     * @param yearPrice before tax; of a site that comes in later, from then on
     * @param calls what calls beside the plan cost, for every labor band
     */
    public record CareAt(Where where, List<Machine> machines, Optional<LocalDate> from, Optional<LocalDate> until,
            VisitCalendar calendar, List<PlanYear.SlotWork> work, MonetaryAmount yearPrice, Explanation how,
            List<CallCharge> calls, List<Change> changes) {
        public CareAt {
            machines = List.copyOf(machines);
            work = List.copyOf(work);
            calls = List.copyOf(calls);
            changes = List.copyOf(changes);
        }
    }

    /**
     * Machines added or removed in mid-term, or a site; none where another site changed its price.
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

        public Change givingBack(List<GivenBack> other) {
            return new Change(added, removed, yearDifference, price, minutes, other);
        }
    }

    public ServiceAgreement {
        sites = List.copyOf(sites);
        payments = List.copyOf(payments);
        remarks = List.copyOf(remarks);
    }

    /** The first day on which it holds. */
    public LocalDate firstDay() {
        return rest.map(RestOfTerm::from).orElse(terms.term().start());
    }

    public boolean isOverSeveralSites() {
        return sites.size() > 1;
    }

    /** The visits of all sites in the order of their days. */
    public List<PlannedVisit> visits() {
        return sites.stream().flatMap(site -> site.calendar().visits().stream())
                .sorted(Comparator.comparing(PlannedVisit::date)).toList();
    }
}
