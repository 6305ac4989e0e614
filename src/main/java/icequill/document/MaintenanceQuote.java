package icequill.document;

import icequill.agreement.Billing;
import icequill.agreement.CleaningInterval;
import icequill.agreement.Term;
import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.party.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What looking after a site's machines would cost: the plan that is recommended, and all choices side by side.
 *
 * @param number empty while it is a draft
 * @param validUntil the last day on which a plan can be accepted at its price
 * @param term of a plan
 * @param billing empty where each visit is billed when it is done
 * @param interval how often the machines should be cleaned, and why
 * @param recommended name of the plan whose cleanings come nearest to that
 * @param calls what calls beside the plan cost, for every labor band
 * @param plans each in detail
 * @param catchUp empty without a survey
 * @param customerEmptiesBin otherwise the technician does
 * @param lastYear empty when nobody counted
 * @param annex whether it shows how every price was figured
 * @param remarks about taxes
 */
public record MaintenanceQuote(Optional<String> number, LocalDate date, LocalDate validUntil, Shop shop,
        Language language, PaperSize size, BillTo billTo, Optional<String> vendorNumber, Where where,
        List<Machine> machines, Term term, Optional<Billing> billing, CleaningInterval interval,
        Wording recommended, List<PlanChoice> choices, List<CallCharge> calls, List<PlanYear> plans,
        Optional<CatchUpPrice> catchUp, Optional<PastCalls> lastYear, boolean customerEmptiesBin, boolean annex,
        List<Phrase> remarks) implements Paper {

    /**
     * The calls that a site had in the last twelve months, and what so many would cost today, before tax.
     *
     * @param calls from 0
     * @param each what one of the kind that the customer described costs at list
     * @param together all of them
     */
    public record PastCalls(int calls, MonetaryAmount each, MonetaryAmount together, Explanation how) {}

    public MaintenanceQuote {
        machines = List.copyOf(machines);
        choices = List.copyOf(choices);
        calls = List.copyOf(calls);
        plans = List.copyOf(plans);
        remarks = List.copyOf(remarks);
    }

    /** The same in another language. */
    public MaintenanceQuote in(Language other) {
        return new MaintenanceQuote(number, date, validUntil, shop, other, size, billTo, vendorNumber, where, machines,
                term, billing, interval, recommended, choices, calls, plans, catchUp, lastYear, customerEmptiesBin,
                annex, remarks);
    }

    public boolean isRecommended(PlanChoice choice) {
        return choice.kind() == PlanChoice.Kind.AGREEMENT && choice.plan().filter(recommended::equals).isPresent();
    }
}
