package icequill.cli.terminal;

import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The day of a paper, or that something is asked about. */
public final class DayOption {

    @Option(names = "--date", paramLabel = "D", description = "The date of the paper, or the day that is asked about, as 2026-05-14. Default: today.")
    private @Nullable LocalDate date;

    /** The one that was given, or else today where the shop is. */
    public LocalDate in(Path folder, Clock clock) {
        return date == null ? ShopDay.today(folder, clock) : date;
    }
}
