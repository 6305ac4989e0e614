package icequill.cli.visit;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on sales without a visit. */
@Command(name = "sale", mixinStandardHelpOptions = true, subcommands = SaleAddCommand.class, description = "Takes what was sold without a visit into the shop's book.", footerHeading = "%nExample:%n", footer = "  icequill sale add pennon-wharf-taproom water-filter=2 --shipping 14.50")
public final class SaleCommand extends Noun {}
