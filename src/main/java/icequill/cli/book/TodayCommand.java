package icequill.cli.book;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.care.TodayOffice;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what waits for somebody. */
@Command(name = "today", mixinStandardHelpOptions = true, description = "Tells what waits: visits planned and late, finished ones that are not billed, quotes that soon lapse.", footerHeading = "%nExamples:%n", footer = {
        "  icequill today", "  icequill today --date 2026-06-01 --lang es"})
public final class TodayCommand extends BookCommand {

    @Option(names = "--date", paramLabel = "D", description = "The day, as 2026-05-14. Default: today.")
    private @Nullable LocalDate date;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public TodayCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = folder();
        return show(TodayOffice.of(ShopBook.of(folder, clock()))
                .on(date == null ? ShopDay.today(folder, clock()) : date, reader.language()),
                sheet -> sheet.lines().forEach(this::print));
    }
}
