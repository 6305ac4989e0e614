package icequill.cli.book;

import icequill.cli.terminal.Printout;
import icequill.cli.terminal.Table;
import icequill.office.demo.Demo;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the whole program at work for an invented shop. */
@Command(name = "demo", mixinStandardHelpOptions = true, description = "Makes an invented shop, checks it, and prints every paper it can.", footerHeading = "%nExamples:%n", footer = {
        "  icequill demo", "  icequill demo /tmp/look"})
public final class DemoCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "DIR", arity = "0..1", defaultValue = "icequill-demo", description = "The folder to make. Default: ${DEFAULT-VALUE}. An earlier demo in it is replaced; beside anything else it refuses.")
    private Path folder = Path.of("icequill-demo");

    @Option(names = "--json", description = "Print the result, or the problems, as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        Printout printout = Printout.of(spec.commandLine(), json);
        return printout.answer(Demo.run(folder, step -> progress(printout, step)), made -> {
            printout.out().println(Table.of(List.of("paper", "customer", "net", "tax", "total"), made.rows(), 2));
            printout.out().println("Open them in " + made.folder().resolve("papers"));
            printout.out().println("Its office in a browser: icequill office --shop " + made.folder());
        });
    }

    private void progress(Printout printout, String step) {
        if (!json) {
            printout.err().println(step);
        }
    }
}
