package icequill.cli.register;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on contacts. */
@Command(name = "contact", mixinStandardHelpOptions = true, subcommands = {ContactAddCommand.class,
        ContactChangeCommand.class, ContactListCommand.class,
        ContactRemoveCommand.class}, description = "Keeps whom to turn to at customers and sites, for bills, visits, renewals and approvals.", footerHeading = "%nExamples:%n", footer = {
                "  icequill contact list ruiz",
                "  icequill contact add \"Ana Ruiz\" --customer mill-lane --role owner --for bills,approvals"})
public final class ContactCommand extends Noun {}
