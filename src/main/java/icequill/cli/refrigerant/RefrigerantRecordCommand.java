package icequill.cli.refrigerant;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.CopyOptions;
import icequill.cli.terminal.CustomerLanguage;
import icequill.cli.terminal.DayOption;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.SiteName;
import icequill.office.refrigerant.RefrigerantOffice;
import icequill.request.PaperOptions;
import icequill.shop.ShopBook;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes the record of refrigerant of a site. */
@Command(name = "record", mixinStandardHelpOptions = true, description = "Writes what was added to the machines of a site and recovered from them, for the customer and the inspector and without prices, as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill refrigerant record hotel-fernhill --from 2026-01-01 --until 2026-12-31",
        "  icequill refrigerant record hotel-fernhill --machine lobby-bar --lang es"})
public final class RefrigerantRecordCommand extends BookCommand {

    @Mixin
    private SiteName site = new SiteName();

    @Option(names = "--machine", paramLabel = "MACHINE", description = "Only of this machine, by id.")
    private @Nullable String machine;

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Mixin
    private CustomerLanguage language = new CustomerLanguage();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private CopyOptions copy = new CopyOptions();

    public RefrigerantRecordCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = folder();
        PaperOptions options = new PaperOptions(Optional.empty(), day.in(folder, clock()), language.language(),
                copy.extras(false));
        return show(RefrigerantOffice.of(ShopBook.of(folder, clock())).write(id(site.text()),
                Optional.ofNullable(machine), period.period(), options),
                paper -> paper.files().forEach(written -> print("Wrote " + written)));
    }
}
