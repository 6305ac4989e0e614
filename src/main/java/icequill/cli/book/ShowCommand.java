package icequill.cli.book;

import icequill.answer.EntrySheet;
import icequill.answer.shown.PaperSheet;
import icequill.answer.shown.Shown;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.cli.terminal.Table;
import icequill.office.care.ShowOffice;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows whatever has a name in the book. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of a paper: whom it went to, its lines and taxes, what it bills, what corrects or replaces it, and where its PDF lies; or of a customer, site, machine, visit, agreement or request.", footerHeading = "%nExamples:%n", footer = {
        "  icequill show INV-2026-00012", "  icequill show 12", "  icequill show late-call",
        "  icequill show A-2026-004"})
public final class ShowCommand extends BookCommand {

    private static final int TEXT_COLUMNS = 3;

    @Parameters(paramLabel = "NAME", description = "The paper's number (of INV-2026-00012 also 12, where no other paper has it), or an id.")
    private String name = "";

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public ShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(ShowOffice.of(folder(), clock()).show(name, reader.language()), this::print);
    }

    private void print(Shown shown) {
        shown.paper().ifPresent(this::print);
        boolean several = shown.entries().size() + (shown.visit().isPresent() ? 1 : 0) > 1;
        shown.entries().forEach(entry -> print(entry, several));
        shown.visit().ifPresent(visit -> printParagraphs(visit.lines()));
    }

    private void print(PaperSheet sheet) {
        print(Table.of(sheet.rows(), 2));
        sheet.lines().ifPresent(lines -> {
            print("");
            print(Table.of(lines.head(), lines.rows(), TEXT_COLUMNS));
        });
        sheet.choices().ifPresent(choices -> {
            print("");
            print(Table.of(choices.head(), choices.rows(), 1));
        });
    }

    private void print(EntrySheet entry, boolean isOneOfSeveral) {
        if (isOneOfSeveral) {
            print(entry.kind() + " " + entry.id());
        }
        print(Table.of(entry.rows(), 2));
        Optional<String> more = Shown.more(entry);
        more.ifPresent(command -> print("More: " + command));
        if (isOneOfSeveral) {
            print("");
        }
    }
}
