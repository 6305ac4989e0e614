package icequill.cli.register;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.cli.terminal.SiteName;
import icequill.office.care.SiteOffice;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows a site at a glance. */
@Command(name = "card", mixinStandardHelpOptions = true, description = "Shows a site at a glance: who pays, whom to call, its machines, and how often they should be cleaned and why.", footerHeading = "%nExamples:%n", footer = {
        "  icequill site card hotel-fernhill", "  icequill site card hotel-fernhill --lang es --json"})
public final class SiteCardCommand extends BookCommand {

    @Mixin
    private SiteName site = new SiteName();

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public SiteCardCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = folder();
        return show(SiteOffice.of(ShopBook.of(folder, clock())).card(id(site.text()),
                ShopDay.today(folder, clock()), reader.language()), sheet -> printLines(sheet.lines().stream()));
    }
}
