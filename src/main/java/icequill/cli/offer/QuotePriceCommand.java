package icequill.cli.offer;

import icequill.answer.quote.QuoteSheet;
import icequill.cli.terminal.DayOption;
import icequill.cli.terminal.Paragraph;
import icequill.cli.terminal.PriceTable;
import icequill.cli.terminal.Printout;
import icequill.cli.terminal.QuoteName;
import icequill.cli.terminal.ShopOptions;
import icequill.cli.terminal.Table;
import icequill.office.Office;
import icequill.office.quoting.QuoteOffice;
import icequill.office.quoting.Telling;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells what a quote would come to. */
@Command(name = "price", mixinStandardHelpOptions = true, description = "Tells what a quote would come to: of a repair each line; of maintenance each way of care, how often to clean and why, and what to expect of calls. Nothing is written or stored.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote price crumb-lane-plan", "  icequill quote price crumb-lane-plan --json",
        "  icequill quote price crumb-lane-plan --owner"})
public final class QuotePriceCommand implements Callable<Integer> {

    private final Clock clock;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ShopOptions options = new ShopOptions();

    @Mixin
    private QuoteName form = new QuoteName();

    @Mixin
    private DayOption day = new DayOption();

    @Option(names = "--owner", description = "Show cost and margin too. For the owner's eyes only.")
    private boolean owner;

    public QuotePriceCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Printout printout = Printout.of(spec.commandLine(), options.json());
        Path folder = printout.pricing(options.folderOf(Path.of(form.text())));
        PaperOptions asked = new PaperOptions(Optional.empty(), day.in(folder, clock), options.language(),
                Extras.NONE);
        FormName name = options.form(form.text());
        Office office = options.office(folder);
        if (!office.isMaintenance(name)) {
            return printout.show(office.priceOfQuote(name, asked),
                    sheet -> PriceTable.print(sheet, true, owner, printout));
        }
        return printout.show(QuoteOffice.of(ShopBook.of(folder, clock).with(options.forms())).figures(name, asked,
                new Telling(true, owner)),
                sheet -> print(sheet, printout));
    }

    private static void print(QuoteSheet sheet, Printout printout) {
        if (printout.json()) {
            printout.answer(sheet);
            return;
        }
        printout.out().println(Table.of(sheet.choices().head(), sheet.choices().rows(), 1));
        printout.out().println();
        sheet.lines().stream().flatMap(line -> Paragraph.lines(line).stream()).forEach(printout.out()::println);
        sheet.earnings().ifPresent(earnings -> {
            printout.out().println();
            EarningsTable.print(earnings, printout);
        });
    }
}
