package icequill.answer.rates;

import icequill.files.pricing.PriceRaise;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * Prices that hold from a later day on.
 *
 * @param from their first day
 * @param isWritten whether their files were written
 */
public record RaisedPrices(LocalDate from, List<File> files, boolean isWritten) {

    /**
     * A file that ends on that day, and the one that follows it.
     *
     * @param file its name within the shop's folder
     * @param next the name of the one that follows
     */
    public record File(String file, String next, List<Price> prices) {

        public File {
            prices = List.copyOf(prices);
        }
    }

    /**
     * A price before and after.
     *
     * @param group that it was raised with, such as labor
     * @param path of keys within its file
     */
    public record Price(String group, String path, MonetaryAmount before, MonetaryAmount after) {}

    public RaisedPrices {
        files = List.copyOf(files);
    }

    public static RaisedPrices of(LocalDate from, List<PriceRaise.Following> files, boolean isWritten) {
        return new RaisedPrices(from, files.stream().map(file -> new File(file.file(), file.next(),
                file.prices().stream().map(price -> new Price(price.group().key(), price.path(), price.before(),
                        price.after())).toList()))
                .toList(), isWritten);
    }

    /** For a screen. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        files.forEach(file -> {
            lines.add(file.file() + " ends on " + from + "; from then on " + file.next() + ":");
            file.prices().forEach(price -> lines.add("  " + price.path() + ": " + Amounts.plain(price.before()) + " -> "
                    + Amounts.plain(price.after())));
        });
        lines.add(isWritten ? "Written." : "Nothing is written yet.");
        return lines;
    }
}
