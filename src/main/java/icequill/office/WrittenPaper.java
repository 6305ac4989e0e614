package icequill.office;

import icequill.money.Amounts;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A paper that was written, and where.
 *
 * @param sums empty where the paper asks for nothing
 */
public record WrittenPaper(String name, List<Path> files, String customer, Optional<Sums> sums,
        List<Problem> notices) {

    /** What the customer owes by a paper; a credit note's are negative. */
    public record Sums(MonetaryAmount net, MonetaryAmount tax, MonetaryAmount gross) {

        /** Net, tax and total without a currency. */
        List<String> plain() {
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

    /** One that charges or gives back. */
    public WrittenPaper(String name, List<Path> files, String customer, MonetaryAmount net, MonetaryAmount tax,
            MonetaryAmount gross, List<Problem> notices) {
        this(name, files, customer, Optional.of(new Sums(net, tax, gross)), notices);
    }

    /** Whom it is for, and the total with its currency where there is one. */
    public String summary() {
        return customer + sums.map(all -> ", " + all.currency() + " " + Amounts.plain(all.gross())).orElse("");
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("paper", name);
        view.put("files", files.stream().map(Path::toString).toList());
        view.put("customer", customer);
        sums.ifPresent(all -> {
            view.put("currency", all.currency());
            view.put("net", Amounts.plain(all.net()));
            view.put("tax", Amounts.plain(all.tax()));
            view.put("gross", Amounts.plain(all.gross()));
        });
        return view;
    }

    /** As a row of a table: paper, customer, net, tax, total. */
    public List<String> row() {
        List<String> amounts = sums.map(Sums::plain).orElse(List.of("", "", ""));
        return List.of(name, customer, amounts.get(0), amounts.get(1), amounts.get(2));
    }
}
