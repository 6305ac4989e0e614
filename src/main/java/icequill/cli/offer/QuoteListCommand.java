package icequill.cli.offer;

import icequill.answer.quote.QuoteList;
import icequill.cli.terminal.FoundCommand;
import icequill.office.care.PaperWish;
import icequill.office.quoting.QuoteOffice;
import icequill.shop.ShopDay;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Command;

/** Lists quotes. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists issued quotes with their last day, the newest first. Everything that is asked for has to fit.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote list --month 2026-05", "  icequill quote list crumb lane"})
public final class QuoteListCommand extends FoundCommand {

    public QuoteListCommand(Clock clock) {
        super(clock);
    }

    @Override
    protected List<String> kinds() {
        return List.of("quote");
    }

    @Override
    protected int found(PaperWish wish) {
        return show(QuoteOffice.of(folder(), clock()).issued(wish, ShopDay.today(folder(), clock())),
                found -> printTable(QuoteList.HEAD, found.papers().stream().map(QuoteList.Row::cells).toList()));
    }
}
