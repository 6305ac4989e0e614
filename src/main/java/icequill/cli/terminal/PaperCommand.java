package icequill.cli.terminal;

import icequill.answer.WrittenPaper;
import icequill.office.Office;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What all commands share that write a paper from a file. */
public abstract class PaperCommand implements Callable<Integer> {

    private final Clock clock;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ShopOptions options = new ShopOptions();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private CopyOptions copy = new CopyOptions();

    public PaperCommand(Clock clock) {
        this.clock = clock;
    }

    /** What the paper is written from, as somebody named it: by a file, or as the book calls it. */
    protected abstract String named();

    /** Writes the paper that this command is for. */
    protected abstract Validated<WrittenPaper> write(Office office, FormName from, PaperOptions wish);

    @Override
    public Integer call() {
        Printout printout = printout();
        return printout.show(write(office(), from(), paperOptions()), paper -> print(paper, printout));
    }

    protected final Printout printout() {
        return Printout.of(spec.commandLine(), options.json());
    }

    protected final Office office() {
        return options.office(printout().pricing(options.folderOf(Path.of(named()))));
    }

    protected final FormName from() {
        return options.form(named());
    }

    /** Something else that it is written from, by a file, or as the book calls it. */
    protected final FormName form(String other) {
        return options.form(other);
    }

    /** What the paper is written from, where that can only be a file. */
    protected final Path file() {
        return options.file(Path.of(named()));
    }

    /** Whether a mail about the paper is to be written. */
    protected boolean isMailed() {
        return false;
    }

    protected final PaperOptions paperOptions() {
        return new PaperOptions(Optional.empty(),
                day.in(options.folderOf(Path.of(named())), clock),
                options.language(), copy.extras(false, isMailed()));
    }

    /** What becomes of the mail about it. */
    protected static void tellMail(WrittenPaper paper, Printout printout) {
        paper.mail().ifPresent(mail -> printout.out().println("Next: icequill mail send " + mail));
    }

    private void print(WrittenPaper paper, Printout printout) {
        if (options.json()) {
            printout.answer(paper);
        } else {
            paper.files().forEach(written -> printout.out().println("Wrote " + written));
            printout.out().println(paper.summary());
            tellMail(paper, printout);
        }
        paper.notices().forEach(notice -> printout.err().println("Note: " + notice.text()));
    }
}
