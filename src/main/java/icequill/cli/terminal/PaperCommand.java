package icequill.cli.terminal;

import icequill.answer.WrittenPaper;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import icequill.shop.ShopDay;
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
public abstract class PaperCommand implements Callable<Integer> {

    private final Clock clock;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ShopOptions options = new ShopOptions();

    @Parameters(paramLabel = "FORM", description = "What to write the paper from: a file, or what the book calls it.")
    private String form = "";

    @Option(names = "--number", paramLabel = "N", description = "The number of the paper. Without one it is a draft.")
    private @Nullable String number;

    @Option(names = "--date", paramLabel = "D", description = "The date of the paper, as 2026-05-14. Default: today.")
    private @Nullable LocalDate date;

    @Mixin
    private ExtraOptions extras = new ExtraOptions();

    public PaperCommand(Clock clock) {
        this.clock = clock;
    }

    /** Writes the paper that this command is for. */
    protected abstract Validated<WrittenPaper> write(Office office, FormName from, PaperOptions wish);

    @Override
    public Integer call() {
        Printout printout = printout();
        return printout.show(write(office(), from(), paperOptions()), paper -> print(paper, printout));
    }

    protected final Clock clock() {
        return clock;
    }

    protected final CommandSpec spec() {
        return spec;
    }

    /** Where a command works that is given no file. */
    protected final Path folder() {
        return printout().pricing(options.folder());
    }

    protected final Printout printout() {
        return Printout.of(spec.commandLine(), options.json());
    }

    protected final Office office() {
        return options.office(printout().pricing(options.folderOf(Path.of(form))));
    }

    protected final FormName from() {
        return options.form(form);
    }

    /** What the paper is written from, where that can only be a file. */
    protected final Path file() {
        return options.file(Path.of(form));
    }

    /** Another form than the one that the paper is written from. */
    protected final FormName from(String other) {
        return options.form(other);
    }

    protected final PaperOptions paperOptions() {
        return new PaperOptions(Optional.ofNullable(number),
                date == null ? ShopDay.today(options.folderOf(Path.of(form)), clock) : date,
                options.language(), extras.extras());
    }

    private void print(WrittenPaper paper, Printout printout) {
        if (options.json()) {
            printout.answer(paper);
        } else {
            paper.files().forEach(written -> printout.out().println("Wrote " + written));
            printout.out().println(paper.summary());
        }
        paper.notices().forEach(notice -> printout.err().println("Note: " + notice.text()));
    }
}
