package icequill.cli.book;

import icequill.cli.terminal.BookCommand;
import icequill.office.care.SettingsOffice;
import java.time.Clock;
import picocli.CommandLine.Command;

/** Shows how the shop is set up. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows how the shop is set up.", footerHeading = "%nExample:%n", footer = "  icequill shop show")
public final class ShopShowCommand extends BookCommand {

    public ShopShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(SettingsOffice.of(folder(), clock()).show(), shop -> printLines(shop.lines()));
    }
}
