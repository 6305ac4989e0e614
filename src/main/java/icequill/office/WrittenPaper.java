package icequill.office;

import icequill.money.Amounts;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/** A paper that was written, and where. The amounts are what the customer owes by it; a credit note's are negative. */
public record WrittenPaper(String name, List<Path> files, String customer, MonetaryAmount net, MonetaryAmount tax,
        MonetaryAmount gross, List<Problem> notices) {

    public WrittenPaper {
        files = List.copyOf(files);
        notices = List.copyOf(notices);
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
