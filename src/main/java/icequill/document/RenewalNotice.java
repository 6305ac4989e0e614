package icequill.document;

import icequill.agreement.Installment;
import icequill.agreement.RenewalPrice;
import icequill.agreement.RenewalTerms;
import icequill.agreement.Term;
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

/**
 * Tells a customer that his agreement will renew itself, at which price, and how to refuse.
 *
 * @param agreement its number
 * @param terms of the agreement that ends
 * @param next the term that would follow
 * @param price of a year, old and new, before tax
 * @param sites where the agreement is over several, those that stay
 * @param months what the first twelve months come to where it goes on by the month; empty else
 * @param late why it does not come in time, so that it makes no claim that the agreement renews; empty where it does
 * @param laws that ask for a notice, as the customer should know them; may be empty
 */
public record RenewalNotice(LocalDate date, Shop shop, Language language, PaperSize size, BillTo billTo,
        Optional<String> vendorNumber, Where where, String agreement, Wording plan, List<Machine> machines,
        RenewalTerms terms, Term next, RenewalPrice price, List<SitePrice> sites, List<Installment> months,
        Optional<String> late, List<Phrase> laws) implements Paper {

    /** The price of one of several sites, of a year, old and new, before tax. */
    public record SitePrice(Where where, RenewalPrice price) {}

    public RenewalNotice {
        machines = List.copyOf(machines);
        sites = List.copyOf(sites);
        months = List.copyOf(months);
        laws = List.copyOf(laws);
    }
}
