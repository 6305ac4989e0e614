package icequill.cli.offer;

import icequill.cli.terminal.PriceTable;
import icequill.cli.terminal.Printout;
import icequill.cli.terminal.ShopOptions;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prices one visit and prints the lines. */
@Command(name = "price", mixinStandardHelpOptions = true, description = "Prices a visit and prints its lines and taxes.", footerHeading = "%nExamples:%n", footer = {
        "  icequill price late-call", "  icequill price late-call --how",
        "  icequill price late-call --owner --json"})
public final class PriceCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ShopOptions options = new ShopOptions();

    @Parameters(paramLabel = "VISIT", description = "The visit: a file, or its id in the book.")
    private String visit = "";

    @Option(names = "--how", description = "Show how each number was figured.")
    private boolean how;

    @Option(names = "--owner", description = "Show cost and margin too. For the owner's eyes only.")
    private boolean owner;

    @Override
    public Integer call() {
        Printout printout = Printout.of(spec.commandLine(), options.json());
        return printout.show(
                options.office(printout.pricing(options.folderOf(Path.of(visit)))).price(options.form(visit),
                        options.language()),
                sheet -> PriceTable.print(sheet, how, owner, printout));
    }
}
