package icequill.cli.book;

import icequill.answer.PaperSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.care.PaperOffice;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows one issued paper. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Shows what the book knows of a paper: whom it went to, what it came to, what corrects it, and where its PDF lies.", footerHeading = "%nExamples:%n", footer = {
        "  icequill show INV-2026-00012"})
public final class ShowCommand extends BookCommand {

    @Parameters(paramLabel = "NUMBER", description = "The paper's number.")
    private String number = "";

    public ShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(PaperOffice.of(folder(), clock()).show(number), PaperSheet::json,
                sheet -> print(Table.of(sheet.rows(), 2)));
    }
}
