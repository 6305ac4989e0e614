package icequill.cli.offer;

import icequill.cli.terminal.DayOption;
import icequill.cli.terminal.PriceTable;
import icequill.cli.terminal.Printout;
import icequill.cli.terminal.QuoteName;
import icequill.cli.terminal.ShopOptions;
import icequill.office.Office;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Tells the owner what a quote earns. */
@Command(name = "earnings", mixinStandardHelpOptions = true, description = "Tells what a quote costs the shop, its price and its margin: of each line, or of each plan and visit. For the owner's eyes only.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote earnings float-switch", "  icequill quote earnings crumb-lane-plan --json"})
public final class QuoteEarningsCommand implements Callable<Integer> {

    private final Clock clock;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ShopOptions options = new ShopOptions();

    @Mixin
    private QuoteName form = new QuoteName();

    @Mixin
    private DayOption day = new DayOption();

    public QuoteEarningsCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Printout printout = Printout.of(spec.commandLine(), options.json());
        Path folder = options.folderOf(Path.of(form.text()));
        Office office = options.office(printout.pricing(folder));
        FormName name = options.form(form.text());
        PaperOptions asked = new PaperOptions(Optional.empty(),
                day.in(folder, clock), options.language(), Extras.NONE);
        return office.isMaintenance(name)
                ? printout.show(office.plans().earnings(name, asked),
                        earnings -> EarningsTable.print(earnings, printout))
                : printout.show(office.priceOfQuote(name, asked),
                        sheet -> PriceTable.print(sheet, true, true, printout));
    }
}
