package icequill.document;

import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.tax.Stage;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a repair would cost.
 *
 * @param number empty while it is a draft
 * @param served where and when the work is planned
 * @param found what led to it, if a visit did
 * @param work what would be done, as the office wrote it
 * @param totals with tax as it would be today
 * @param parts empty where all is paid when the work is done
 * @param remarks about taxes
 */
public record RepairQuote(Optional<String> number, LocalDate date, LocalDate validUntil, Shop shop, Language language,
        PaperSize size, BillTo billTo, Optional<String> vendorNumber, ServicePeriod served, Machine machine,
        Optional<Found> found, String work, List<InvoiceLine> lines, Totals totals, Optional<Deposit> deposit,
        Optional<InParts> parts, List<Phrase> remarks) implements Offer {

    /**
     * What a visit found.
     *
     * @param recommended the repair, as the technician wrote it
     */
    public record Found(LocalDate day, Optional<String> complaint, Optional<String> cause, String recommended) {}

    /** What is paid before the work begins, with tax where it is taxed then, and what is left for afterwards. */
    public record Deposit(Percent percent, MonetaryAmount amount, Explanation how, MonetaryAmount rest) {}

    /** In which parts it is paid, two or more. */
    public record InParts(List<Stage> stages) {
        public InParts {
            stages = List.copyOf(stages);
        }
    }

    public RepairQuote {
        lines = List.copyOf(lines);
        remarks = List.copyOf(remarks);
    }
}
