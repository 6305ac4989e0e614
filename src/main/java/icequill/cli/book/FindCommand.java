package icequill.cli.book;

import icequill.answer.BookedPaper;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.care.PaperOffice;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds issued papers. */
@Command(name = "find", mixinStandardHelpOptions = true, description = "Finds papers that the book issued, the newest first: by number, customer, store, address, purchase order, serial, amount (301.13) or date (2026-05-13). Every word has to fit.", footerHeading = "%nExamples:%n", footer = {
        "  icequill find pennon wharf", "  icequill find PO-7731", "  icequill find 301.13 2026-05-13"})
public final class FindCommand extends BookCommand {

    @Parameters(paramLabel = "TEXT", arity = "1..*", description = "Words to look for; of names and addresses, beginnings are enough.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--most", paramLabel = "N", description = "How many papers at most. Default: ${DEFAULT-VALUE}.", defaultValue = "50")
    private int most = 50;

    public FindCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(PaperOffice.of(folder(), clock()).find(String.join(" ", words), Math.max(1, most)),
                BookCommand::json, papers -> {
                    if (papers.isEmpty()) {
                        print("No paper has all of these words.");
                    } else {
                        print(Table.of(BookedPaper.HEAD, papers.stream().map(BookedPaper::row).toList(), 4));
                    }
                });
    }
}
