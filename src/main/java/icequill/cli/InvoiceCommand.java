package icequill.cli;

import icequill.office.JsonText;
import icequill.office.Office;
import icequill.office.WrittenPaper;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the invoice of one visit. */
@Command(name = "invoice", mixinStandardHelpOptions = true, description = "Writes the invoice of a visit as PDF into the shop folder's papers/.", footerHeading = "%nExamples:%n", footer = {
        "  icequill invoice visits/late-call.yaml                        a draft, marked as one",
        "  icequill invoice visits/late-call.yaml --number 2026-0114 --date 2026-05-14",
        "  icequill invoice visits/late-call.yaml --lang es --html",
        "  icequill invoice visits/late-call.yaml --number 2026-0114 --xml   UBL beside the PDF"})
final class InvoiceCommand implements Callable<Integer> {

    private final Clock clock;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ShopOptions options = new ShopOptions();

    @Parameters(paramLabel = "FILE", description = "The visit's file.")
    private Path file = Path.of("");

    @Option(names = "--number", paramLabel = "N", description = "The invoice number. Without one it is a draft.")
    private @Nullable String number;

    @Option(names = "--date", paramLabel = "D", description = "The invoice's date, as 2026-05-14. Default: today.")
    private @Nullable LocalDate date;

    @Mixin
    private ExtraOptions extras = new ExtraOptions();

    InvoiceCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Printout printout = Printout.of(spec.commandLine(), options.json());
        Office.Wish wish = new Office.Wish(Optional.ofNullable(number), date == null ? LocalDate.now(clock) : date,
                options.language(), extras.extras());
        return printout.show(
                Office.of(options.folderOf(file)).invoice(options.file(file), wish),
                paper -> print(paper, printout));
    }

    private void print(WrittenPaper paper, Printout printout) {
        if (options.json()) {
            printout.out().println(JsonText.of(paper.json()));
        } else {
            paper.files().forEach(written -> printout.out().println("Wrote " + written));
            printout.out().println(paper.customer() + ", " + paper.total());
        }
        paper.notices().forEach(notice -> printout.err().println("Note: " + notice.text()));
    }
}
