package icequill.cli.book;

import icequill.answer.rates.WhatIf;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.Table;
import icequill.office.care.WhatIfOffice;
import icequill.shop.ShopDay;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tries rates on the visits that were done. */
@Command(name = "try", mixinStandardHelpOptions = true, description = "Tells what the visits of a period come to by the rates of their days, what they would come to by the rates of another day or version, in force or not, and the difference, by customer and by class of charge. Nothing is changed.", footerHeading = "%nExamples:%n", footer = {
        "  icequill rates try --on 2026-12-31                                        the folder's rates of that day, all visits",
        "  icequill rates try --on 2026-12-31 --from 2026-05-01 --until 2026-06-30"})
public final class RatesTryCommand extends BookCommand {

    @Parameters(paramLabel = "VERSION", arity = "0..1", description = "The version of the rates to try, by its id or the first four or more letters of it. Default: the folder's, in force or not.")
    private @Nullable String version;

    @Option(names = "--on", paramLabel = "DAY", description = "The day whose prices are tried, as 2028-01-01. Default: today.")
    private @Nullable LocalDate on;

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    public RatesTryCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(WhatIfOffice.of(folder(), clock()).of(Optional.ofNullable(version),
                on == null ? ShopDay.today(folder(), clock()) : on, period.period()), tried -> {
                    print(tried.visits() + " visits, before tax: by the rates of their days, and by those of "
                            + tried.on());
                    print(Table.of(WhatIf.HEAD, tried.rows(), 1));
                });
    }
}
