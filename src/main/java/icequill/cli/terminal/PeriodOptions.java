package icequill.cli.terminal;

import icequill.office.care.AskedPeriod;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The days that a question is about. */
public final class PeriodOptions {

    @Option(names = "--month", paramLabel = "MONTH", description = "Only this month, such as 2026-05.")
    private @Nullable String month;

    @Option(names = "--from", paramLabel = "DAY", description = "Not before this day.")
    private @Nullable LocalDate from;

    @Option(names = "--until", paramLabel = "DAY", description = "Not after this day.")
    private @Nullable LocalDate until;

    public AskedPeriod period() {
        return new AskedPeriod(Optional.ofNullable(month), Optional.ofNullable(from), Optional.ofNullable(until));
    }
}
