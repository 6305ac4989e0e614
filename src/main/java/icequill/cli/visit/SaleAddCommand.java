package icequill.cli.visit;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.NamedValue;
import icequill.office.billing.RecordOffice;
import icequill.office.billing.SaleWish;
import icequill.shop.ShopDay;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a sale without a visit into the book. */
@Command(name = "add", mixinStandardHelpOptions = true, description = "Takes what was shipped, or fetched at the shop, into the shop's book, priced and taxed where it was handed over, to be billed by: icequill invoice issue. For all that a sale may hold: icequill form sale.", footerHeading = "%nExamples:%n", footer = {
        "  icequill sale add pennon-wharf-taproom water-filter=2 --shipping 14.50",
        "  icequill sale add crumb-lane-bakery nylon-brush=1 water-filter=1 --purchase-order PO-7"})
public final class SaleAddCommand extends BookCommand {

    @Parameters(index = "0", paramLabel = "SITE", description = "Whose it is: a site's id in the book.")
    private String site = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "MATERIAL=N", converter = NamedValue.Reader.class, description = "What was sold, by its id in pricing/, and how much of it.")
    private List<NamedValue> things = List.of();

    @Option(names = "--fetched", description = "Fetched at the shop, and taxed there. Default: shipped to the site.")
    private boolean fetched;

    @Option(names = "--shipping", paramLabel = "A", description = "What sending costs the customer, before tax.")
    private @Nullable BigDecimal shipping;

    @Option(names = "--purchase-order", paramLabel = "PO", description = "The customer's order.")
    private @Nullable String purchaseOrder;

    @Option(names = "--date", paramLabel = "D", description = "The day it was sent or handed over, as 2026-05-14. Default: today.")
    private @Nullable LocalDate date;

    public SaleAddCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        LocalDate day = date == null ? ShopDay.today(folder(), clock()) : date;
        return show(NamedValue.byName(things).then(SaleWish::amounts)
                .map(amounts -> new SaleWish(site, amounts, day, fetched ? "fetched" : "shipped",
                        Optional.ofNullable(shipping), Optional.ofNullable(purchaseOrder)))
                .then(RecordOffice.of(pricing(folder()), clock())::record),
                visit -> RecordedPrint.print(visit, printout()));
    }
}
