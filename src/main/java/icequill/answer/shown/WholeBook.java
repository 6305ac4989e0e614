package icequill.answer.shown;

import icequill.answer.PaymentSheet;
import icequill.files.answer.OneByOne;
import icequill.files.yaml.Tree;
import java.time.LocalDate;
import java.util.Optional;

/**
 * All that a book holds, for other programs.
 *
 * @param customers but for those who were merged into others
 * @param sites with their machines, but for those that were merged into others
 * @param visits that were done
 * @param papers in the order of issue
 */
public record WholeBook(OneByOne<Entry> customers, OneByOne<Entry> mergedCustomers, OneByOne<Entry> sites,
        OneByOne<Entry> agreements, OneByOne<Entry> requests, OneByOne<Entry> plannedVisits, OneByOne<Entry> visits,
        OneByOne<Entry> accounts, OneByOne<PaymentSheet> payments, OneByOne<Issued> papers) {

    /**
     * An entry.
     *
     * @param id of an account that of its customer
     * @param forgotten the day on which what is personal about a customer was blanked
     * @param mergedInto another customer, by id
     * @param withdrawn that a visit is not to be billed
     * @param form as it can be taken in again; one whose customer was forgotten has no more than its head
     */
    public record Entry(String id, Optional<LocalDate> forgotten, Optional<String> mergedInto,
            Optional<PaymentSheet.Withdrawn> withdrawn, Tree.Branch form) {

        public static Entry of(String id, Tree.Branch form) {
            return new Entry(id, Optional.empty(), Optional.empty(), Optional.empty(), form);
        }
    }

    /**
     * A paper.
     *
     * @param data as its file carries it, in paper.json
     */
    public record Issued(KnownPaper paper, Tree.Branch data) {}
}
