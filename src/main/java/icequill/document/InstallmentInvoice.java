package icequill.document;

import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.party.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/**
 * What the customer is asked to pay for a stretch of an agreement.
 *
 * @param number empty while it is a draft
 * @param agreement its number
 * @param payment which of the payments, from 1; those for months after the term are numbered apart
 * @param payments how many the term has
 * @param served where, and the days that the payment is for
 * @param sites where the agreement is over several
 * @param lines one for each site, at the tax of its own date
 * @param remarks about taxes
 */
public record InstallmentInvoice(Optional<String> number, LocalDate date, LocalDate due, Shop shop, Language language,
        PaperSize size, BillTo billTo, Optional<String> vendorNumber, String agreement, Wording plan, int payment,
        int payments, ServicePeriod served, Optional<BilledSites> sites, List<InvoiceLine> lines, Totals totals,
        List<Phrase> remarks)
        implements Bill {

    /** The sites that something is asked for, in the order of the lines. */
    public record BilledSites(List<BilledSite> all) {
        public BilledSites {
            all = List.copyOf(all);
        }
    }

    /** One of them, by its id and as the customer knows it. */
    public record BilledSite(String id, Where where) {}

    public InstallmentInvoice {
        lines = List.copyOf(lines);
        remarks = List.copyOf(remarks);
    }

    @Override
    public Optional<LocalDate> dueDate() {
        return Optional.of(due);
    }

    /** What was billed of one of several sites, before tax. */
    public MonetaryAmount netAt(String site) {
        List<BilledSite> all = sites.map(BilledSites::all).orElse(List.of());
        return Amounts.sum(IntStream.range(0, all.size()).filter(i -> all.get(i).id().equals(site))
                .mapToObj(i -> lines.get(i).net()).toList(), totals.net().getCurrency());
    }
}
