package icequill.cli;

import icequill.office.JsonText;
import icequill.office.Office;
import icequill.office.PaperOptions;
import icequill.office.ShopDay;
import icequill.office.WrittenPaper;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What all commands share that write a paper from a file. */
abstract class PaperCommand implements Callable<Integer> {

    private final Clock clock;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ShopOptions options = new ShopOptions();

    @Parameters(paramLabel = "FILE", description = "The file to write the paper from.")
    private Path file = Path.of("");

    @Option(names = "--number", paramLabel = "N", description = "The number of the paper. Without one it is a draft.")
    private @Nullable String number;

    @Option(names = "--date", paramLabel = "D", description = "The date of the paper, as 2026-05-14. Default: today.")
    private @Nullable LocalDate date;

    @Mixin
    private ExtraOptions extras = new ExtraOptions();

    PaperCommand(Clock clock) {
        this.clock = clock;
    }

    /** Writes the paper that this command is for. */
    abstract Checked<WrittenPaper> write(Office office, Path from, PaperOptions wish);

    @Override
    public Integer call() {
        Printout printout = printout();
        return printout.show(write(office(), from(), paperOptions()), paper -> print(paper, printout));
    }

    final Clock clock() {
        return clock;
    }

    final CommandSpec spec() {
        return spec;
    }

    /** Where a command works that is given no file. */
    final Path folder() {
        return options.folder();
    }

    final Printout printout() {
        return Printout.of(spec.commandLine(), options.json());
    }

    final Office office() {
        return Office.of(options.folderOf(file));
    }

    final Path from() {
        return options.file(file);
    }

    /** Another file than the one that the paper is written from. */
    final Path from(Path other) {
        return options.file(other);
    }

    final Path folderOf(Path other) {
        return options.folderOf(other);
    }

    final PaperOptions paperOptions() {
        return new PaperOptions(Optional.ofNullable(number),
                date == null ? ShopDay.today(options.folderOf(file), clock) : date,
                options.language(), extras.extras());
    }

    private void print(WrittenPaper paper, Printout printout) {
        if (options.json()) {
            printout.out().println(JsonText.of(paper.json()));
        } else {
            paper.files().forEach(written -> printout.out().println("Wrote " + written));
            printout.out().println(paper.summary());
        }
        paper.notices().forEach(notice -> printout.err().println("Note: " + notice.text()));
    }
}
