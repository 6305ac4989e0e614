package icequill.answer.rates;

import icequill.files.pricing.PriceRaise;
import icequill.files.pricing.PriceRaise.Split;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Prices that are raised from a day on.
 *
 * @param from their first day
 * @param isPast whether that day is gone already
 * @param agreed files of rate sheets that hold from then on, whose prices stay as they are
 * @param isWritten whether the files were written
 */
public record RaisedPrices(LocalDate from, boolean isPast, List<File> files, List<String> agreed, boolean isWritten) {

    /**
     * A file that ends on that day, and the one that follows it; or one that begins later and is raised as it stands.
     *
     * @param file its name within the shop's folder
     * @param next the name of the one that follows; empty where it is raised as it stands
     */
    public record File(String file, Optional<String> next, List<Price> prices) {

        public File {
            prices = List.copyOf(prices);
        }

        private String line(LocalDate from) {
            return next.map(other -> file + " ends on " + from + "; from then on " + other + ":")
                    .orElse(file + " begins on that day or later, and is raised as it stands:");
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
        agreed = List.copyOf(agreed);
    }

    public static RaisedPrices of(LocalDate from, boolean isPast, List<PriceRaise.Change> files, List<String> agreed,
            boolean isWritten) {
        return new RaisedPrices(from, isPast, files.stream()
                .map(file -> new File(file.file(), file.split().map(Split::next), file.prices().stream()
                        .map(price -> new Price(price.group().key(), price.path(), price.before(), price.after()))
                        .toList()))
                .toList(), agreed, isWritten);
    }

    /** For a screen. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        files.forEach(file -> {
            lines.add(file.line(from));
            file.prices().forEach(price -> lines.add("  " + price.path() + ": " + Amounts.plain(price.before()) + " -> "
                    + Amounts.plain(price.after())));
        });
        if (!agreed.isEmpty()) {
            lines.add("Prices agreed with somebody stay as they are: " + String.join(", ", agreed));
        }
        if (isPast) {
            lines.add(
                    from + " is past: visits since then that are not billed yet are billed at the new prices; what was"
                            + " billed stays.");
        }
        lines.add(isWritten ? "Written." : "Nothing is written yet.");
        return lines;
    }
}
