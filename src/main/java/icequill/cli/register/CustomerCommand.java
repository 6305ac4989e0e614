package icequill.cli.register;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on the book's customers. */
@Command(name = "customer", mixinStandardHelpOptions = true, subcommands = {CustomerAddCommand.class,
        CustomerChangeCommand.class, CustomerListCommand.class, CustomerShowCommand.class,
        CustomerMergeCommand.class, CustomerForgetCommand.class, CustomerStatementCommand.class,
        CustomerReminderCommand.class}, description = "Keeps the customers of the shop's book, and writes what they owe.", footerHeading = "%nExamples:%n", footer = {
                "  icequill customer add mill-lane --name \"Mill Lane Bakery\" --street \"4 Mill Lane\" --city Alderton --region NY --postal-code 10999 --country US",
                "  icequill customer change mill-lane --telephone 607-555-0142",
                "  icequill customer list bakery",
                "  icequill customer show mill-lane",
                "  icequill customer merge mill-lane-2 --into mill-lane",
                "  icequill customer statement mill-lane   what is owed, as PDF",
                "  icequill customer forget mill-lane --dry-run"})
public final class CustomerCommand extends Noun {}
