package icequill.cli.book;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.care.PricesOffice;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what is charged on a day. */
@Command(name = "prices", mixinStandardHelpOptions = true, description = "Tells what is charged on a day: each price, in which file and line it stands, where it comes from, and whether it is still as it came with the program. What things cost the shop is not told.", footerHeading = "%nExamples:%n", footer = {
        "  icequill rates prices", "  icequill rates prices --on 2026-12-31 --site hotel-fernhill"})
public final class RatesPricesCommand extends BookCommand {

    @Option(names = "--on", paramLabel = "DAY", description = "The day, as 2028-01-01. Default: today.")
    private @Nullable LocalDate on;

    @Option(names = "--site", paramLabel = "SITE", description = "The site whose own prices lie over the shop's, by its id or a file.")
    private @Nullable String site;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public RatesPricesCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = folder();
        return list(PricesOffice.of(ShopBook.of(folder, clock())).on(
                on == null ? ShopDay.today(folder, clock()) : on, Optional.ofNullable(site).map(this::id),
                reader.language()));
    }
}
