package icequill.cli.book;

import icequill.answer.ShopMade;
import icequill.cli.terminal.Printout;
import icequill.office.demo.NewShop;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a shop folder. */
@Command(name = "new", mixinStandardHelpOptions = true, description = "Makes a shop folder: shop.yaml, pricing/, templates/, and the shop's book.", footerHeading = "%nExamples:%n", footer = {
        "  icequill new my-shop           with rates to change into your own",
        "  icequill new trial --demo      filled with an invented shop"})
public final class NewCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "DIR", description = "The folder to make. It must not exist yet, or be empty.")
    private Path folder = Path.of("");

    @Option(names = "--demo", description = "Fill it with an invented shop: five sites with their visits, agreements and requests.")
    private boolean demo;

    @Option(names = "--json", description = "Print the result, or the problems, as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        Printout printout = Printout.of(spec.commandLine(), json);
        return printout.answer(NewShop.create(folder, demo).map(ShopMade::new), made -> {
            printout.out().println("Made " + made.shop());
            printout.out().println(demo
                    ? "Next: icequill check --shop " + made.shop()
                    : "Next: put your name into shop.yaml and your prices into pricing/, then: icequill check --shop "
                            + made.shop());
        });
    }
}
