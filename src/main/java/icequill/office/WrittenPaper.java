package icequill.office;

import icequill.document.CreditNote;
import icequill.document.Invoice;
import icequill.document.Offer;
import icequill.document.PricedPaper;
import icequill.document.Totals;
import icequill.money.Amounts;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/**
 * A paper that was written, and where.
 *
 * @param isOwed whether the amounts are owed by it, as they are not by a quote; those of a credit note are negative
 */
public record WrittenPaper(String name, List<Path> files, String customer, MonetaryAmount net, MonetaryAmount tax,
        MonetaryAmount gross, boolean isOwed, List<Problem> notices) {

    public WrittenPaper {
        files = List.copyOf(files);
        notices = List.copyOf(notices);
    }

    /** Of a paper with sums. */
    static WrittenPaper of(String name, List<Path> files, PricedPaper paper, List<Problem> notices) {
        Totals totals = paper.totals();
        String customer = paper.billTo().name();
        return switch (paper) {
        case CreditNote credit -> new WrittenPaper(name, files, customer, totals.net().negate(),
                totals.tax().negate(), totals.gross().negate(), true, notices);
        case Invoice invoice -> new WrittenPaper(name, files, customer, totals.net(), totals.tax(), totals.gross(),
                true, notices);
        case Offer offer -> new WrittenPaper(name, files, customer, totals.net(), totals.tax(), totals.gross(), false,
                notices);
        };
    }

    /** The total with its currency. */
    public String total() {
        return gross.getCurrency().getCurrencyCode() + " " + Amounts.plain(gross);
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("paper", name);
        view.put("files", files.stream().map(Path::toString).toList());
        view.put("customer", customer);
        view.put("currency", gross.getCurrency().getCurrencyCode());
        view.put("net", Amounts.plain(net));
        view.put("tax", Amounts.plain(tax));
        view.put("gross", Amounts.plain(gross));
        return view;
    }

    /** As a row of a table: paper, customer, net, tax, total. */
    public List<String> row() {
        return List.of(name, customer, Amounts.plain(net), Amounts.plain(tax), Amounts.plain(gross));
    }
}
