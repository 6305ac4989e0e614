package icequill.cli.book;

import icequill.answer.BookedPaper;
import icequill.answer.paper.PaperList;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.Table;
import icequill.office.care.PaperOffice;
import icequill.office.care.PaperWish;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds issued papers. */
@Command(name = "find", mixinStandardHelpOptions = true, description = "Finds papers that the book issued, the newest first: by number, customer, store, address, purchase order, serial, amount (301.13) or date (2026-05-13), by month, kind, state, store or who called. Everything that is asked for has to fit.", footerHeading = "%nExamples:%n", footer = {
        "  icequill find pennon wharf", "  icequill find PO-7731", "  icequill find 301.13 2026-05-13",
        "  icequill find --month 2026-05 --kind invoice --state open", "  icequill find --store 0412 --caller castell",
        "  icequill find 12               number 12 of any series, and the like"})
public final class FindCommand extends BookCommand {

    @Parameters(paramLabel = "TEXT", arity = "0..*", description = "Words to look for; of names and addresses, beginnings are enough.")
    private List<String> words = new ArrayList<>();

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Option(names = "--kind", paramLabel = "KIND", split = ",", description = "Only papers of these kinds: invoice, credit-note, quote, maintenance-quote, repair-quote.")
    private List<String> kinds = new ArrayList<>();

    @Option(names = "--state", paramLabel = "STATE", description = "Only invoices in this state: open (something is owed), part-paid, paid, credited (all was given back).")
    private @Nullable String state;

    @Option(names = "--caller", paramLabel = "NAME", description = "Only papers for calls of this person; a part of the name is enough.")
    private @Nullable String caller;

    @Option(names = "--store", paramLabel = "NUMBER", description = "Only papers for the site that the customer gave this number.")
    private @Nullable String store;

    @Option(names = "--most", paramLabel = "N", description = "How many papers at most. Default: ${DEFAULT-VALUE}.", defaultValue = "50")
    private int most = 50;

    public FindCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        PaperWish wish = new PaperWish(String.join(" ", words), period.period(), kinds, Optional.ofNullable(state),
                Optional.ofNullable(caller), Optional.ofNullable(store), Math.max(1, most));
        return show(PaperOffice.of(folder(), clock()).find(wish).map(PaperList::new), found -> {
            if (found.papers().isEmpty()) {
                print("No paper fits.");
            } else {
                print(Table.of(BookedPaper.HEAD, found.papers().stream().map(BookedPaper::row).toList(), 4));
            }
        });
    }
}
