package icequill.answer;

import icequill.answer.amounts.PaperAmounts;
import icequill.document.CombinedInvoice;
import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.Offer;
import icequill.document.PricedPaper;
import icequill.document.StageInvoice;
import icequill.document.Totals;
import icequill.files.answer.Sheet;
import icequill.money.Amounts;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * A paper that was written, and where.
 *
 * @param files the PDF first
 * @param sums empty where the paper has none
 * @param amounts every amount of the paper; empty where its figures have a form of their own
 * @param mail the mail about it that waits to be sent, by id; empty where none was asked for
 */
public record WrittenPaper(List<Path> files, String customer, Optional<Sums> sums, Optional<PaperAmounts> amounts,
        List<Problem> notices, Optional<String> mail) implements Sheet {

    /**
     * What a paper comes to.
     *
     * @param isOwed whether the customer owes it, as he does not by a quote; what a credit note gives back is negative
     */
    public record Sums(MonetaryAmount net, MonetaryAmount tax, MonetaryAmount gross, boolean isOwed) {

        /** Net, tax and total without a currency. */
        public List<String> plain() {
            return List.of(Amounts.plain(net), Amounts.plain(tax), Amounts.plain(gross));
        }

        String currency() {
            return gross.getCurrency().getCurrencyCode();
        }
    }

    public WrittenPaper {
        files = List.copyOf(files);
        notices = List.copyOf(notices);
    }

    public WrittenPaper with(List<Problem> known) {
        return new WrittenPaper(files, customer, sums, amounts, known, mail);
    }

    /** With the files of another that was written with it, whose sums are not told. */
    public WrittenPaper and(WrittenPaper other) {
        return new WrittenPaper(Stream.concat(files.stream(), other.files.stream()).toList(),
                customer.equals(other.customer) ? customer : customer + ", " + other.customer, sums, amounts,
                Stream.concat(notices.stream(), other.notices.stream()).toList(), mail);
    }

    /** The same after the folder that its files are in was moved. */
    public WrittenPaper moved(Path from, Path to) {
        return new WrittenPaper(files.stream().map(file -> to.resolve(from.relativize(file))).toList(), customer, sums,
                amounts, notices, mail);
    }

    /** The same, about which a mail waits. */
    public WrittenPaper by(String written) {
        return new WrittenPaper(files, customer, sums, amounts, notices, Optional.of(written));
    }

    /** Of a bill or an offer, which says whom it is for. */
    public static WrittenPaper of(List<Path> files, PricedPaper paper, List<Problem> notices) {
        Totals totals = paper.totals();
        Sums sums = switch (paper) {
        case CreditNote credit ->
            new Sums(totals.net().negate(), totals.tax().negate(), totals.gross().negate(), true);
        case Invoice invoice -> new Sums(totals.net(), totals.tax(), totals.gross(), true);
        case CombinedInvoice invoice -> new Sums(totals.net(), totals.tax(), totals.gross(), true);
        case StageInvoice invoice -> new Sums(totals.net(), totals.tax(), totals.gross(), true);
        case InstallmentInvoice invoice -> new Sums(totals.net(), totals.tax(), totals.gross(), true);
        case Offer offer -> new Sums(totals.net(), totals.tax(), totals.gross(), false);
        };
        return new WrittenPaper(files, paper.billTo().name(), Optional.of(sums), PaperAmounts.of(paper), notices,
                Optional.empty());
    }

    /** Of a paper without a total of its own. */
    public static WrittenPaper of(List<Path> files, icequill.document.Paper paper, String customer,
            List<Problem> notices) {
        return new WrittenPaper(files, customer, Optional.empty(), PaperAmounts.of(paper), notices, Optional.empty());
    }

    /** What its files are called, without the ending. */
    public String name() {
        return files.getFirst().getFileName().toString().replaceFirst("[.][a-z]+$", "");
    }

    /** Whether the customer owes by it, or is given back. */
    public boolean isOwed() {
        return sums.map(Sums::isOwed).orElse(false);
    }

    /** Whom it is for, and the total with its currency where there is one. */
    public String summary() {
        return customer + sums.map(all -> ", " + all.currency() + " " + Amounts.plain(all.gross())).orElse("");
    }

    /**
     * What JSON shows of it.
     *
     * @param name of its files, without the ending
     * @param net and {@code tax}, {@code gross}: missing where the paper has no sum; of a credit note negative
     * @param mail that waits to be sent, by id; missing where none was asked for
     */
    public record Written(String name, List<Path> files, String customer, Optional<MonetaryAmount> net,
            Optional<MonetaryAmount> tax, Optional<MonetaryAmount> gross, Optional<PaperAmounts> amounts,
            List<Problem> notices, Optional<String> mail) {}

    @Override
    public Written data() {
        return new Written(name(), files, customer, sums.map(Sums::net), sums.map(Sums::tax), sums.map(Sums::gross),
                amounts, notices, mail);
    }

    /** As a row of a table: paper, customer, net, tax, total. */
    public List<String> row() {
        List<String> amounts = sums.map(Sums::plain).orElse(List.of("", "", ""));
        return List.of(name(), customer, amounts.get(0), amounts.get(1), amounts.get(2));
    }
}
