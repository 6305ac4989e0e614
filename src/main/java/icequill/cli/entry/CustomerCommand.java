package icequill.cli.entry;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The commands on the book's customers. */
@Command(name = "customer", mixinStandardHelpOptions = true, subcommands = {CustomerAddCommand.class,
        CustomerChangeCommand.class, CustomerListCommand.class, CustomerShowCommand.class,
        CustomerMergeCommand.class,
        CustomerForgetCommand.class}, description = "Keeps the customers of the shop's book.", footerHeading = "%nExamples:%n", footer = {
                "  icequill customer add mill-lane --name \"Mill Lane Bakery\" --street \"4 Mill Lane\" --city Alderton --region NY --postal-code 10999 --country US",
                "  icequill customer change mill-lane --attention Accounts --from 2026-07-01",
                "  icequill customer list bakery",
                "  icequill customer show mill-lane",
                "  icequill customer merge mill-lane-2 --into mill-lane",
                "  icequill customer forget mill-lane"})
public final class CustomerCommand implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
