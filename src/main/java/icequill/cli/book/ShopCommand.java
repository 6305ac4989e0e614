package icequill.cli.book;

import icequill.cli.terminal.Noun;
import picocli.CommandLine.Command;

/** The commands on how the shop is set up. */
@Command(name = "shop", mixinStandardHelpOptions = true, subcommands = {ShopShowCommand.class,
        ShopChangeCommand.class}, description = "Shows and changes how the shop is set up: its name, address, language, paper, and the picture on its papers.", footerHeading = "%nExamples:%n", footer = {
                "  icequill shop show", "  icequill shop change phone=607-555-0142"})
public final class ShopCommand extends Noun {}
