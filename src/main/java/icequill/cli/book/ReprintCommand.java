package icequill.cli.book;

import icequill.answer.Reprint;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExtraOptions;
import icequill.office.care.PaperOffice;
import icequill.request.Extras;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Prints an issued paper again. */
@Command(name = "reprint", mixinStandardHelpOptions = true, description = "Makes sure that a paper's PDF is there byte for byte as it was issued; where it is gone or was changed, it is printed again from the book. With --html, --xml or --bare it writes such copies into papers/ instead.", footerHeading = "%nExamples:%n", footer = {
        "  icequill reprint INV-2026-00012",
        "  icequill reprint INV-2026-00012 --bare   without data, for mail gateways"})
public final class ReprintCommand extends BookCommand {

    @Parameters(paramLabel = "NUMBER", description = "The paper's number.")
    private String number = "";

    @Mixin
    private ExtraOptions extras = new ExtraOptions();

    public ReprintCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        PaperOffice office = PaperOffice.of(folder(), clock());
        if (!extras.extras().equals(Extras.NONE)) {
            return show(office.copies(number, extras.extras()),
                    files -> Map.of("files", files.stream().map(Path::toString).toList()), this::wrote);
        }
        return show(office.reprint(number), Reprint::json, this::tell);
    }

    private void wrote(List<Path> files) {
        files.forEach(file -> print("Wrote " + file));
    }

    private void tell(Reprint paper) {
        paper.aside()
                .ifPresent(changed -> printout().err().println("Note: the file was changed; it lies in " + changed));
        print(paper.file().toString());
        print((paper.printed() ? "Printed again, " : "There, ") + "byte for byte as issued (SHA-256 " + paper.hash()
                + ")");
    }
}
