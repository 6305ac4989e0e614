package icequill.cli.terminal;

import icequill.answer.BookedPaper;
import icequill.answer.Listing;
import icequill.office.care.CheckShop;
import icequill.problem.Validated;
import icequill.shop.FormName;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What all commands share that work on the shop's book. */
public abstract class BookCommand implements Callable<Integer> {

    private final Clock clock;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private FolderOptions options = new FolderOptions();

    public BookCommand(Clock clock) {
        this.clock = clock;
    }

    protected final Clock clock() {
        return clock;
    }

    protected final CommandSpec spec() {
        return spec;
    }

    protected final Path folder() {
        return told(options.folder());
    }

    protected final Path folderOf(Path file) {
        return told(options.folderOf(file));
    }

    /** The same where work is priced or printed. */
    protected final Path pricing(Path shop) {
        return printout().pricing(shop);
    }

    protected final FormName form(String name) {
        return options.form(name);
    }

    /** What the book calls what somebody named, by a file too. */
    protected final String id(String name) {
        return form(name).id();
    }

    protected final Path file(Path file) {
        return options.file(file);
    }

    protected final Printout printout() {
        return Printout.of(spec.commandLine(), options.json());
    }

    /** A password that others may read is told whatever the command does. */
    private Path told(Path shop) {
        CheckShop.readablePassword(shop).ifPresent(readable -> printout().err().println("Note: " + readable.text()));
        return shop;
    }

    /** Shows a result as JSON where that is asked for, else as text. */
    protected final <T> int show(Validated<T> result, Consumer<T> text) {
        return printout().answer(result, text);
    }

    /** A paper that was issued, and where its PDF lies. */
    static void print(BookedPaper paper, Printout printout) {
        printout.out().println("Issued " + paper.title() + paper.due().map(day -> ", due " + day).orElse("") + ": "
                + paper.where());
        printout.out().println("  " + paper.file());
        paper.notices().forEach(notice -> printout.err().println("Note: " + notice.text()));
    }

    protected final <T extends Listing> int list(Validated<T> listing) {
        return show(listing, found -> print(found.rows().isEmpty()
                ? "None."
                : Table.of(found.head(), found.rows(), found.head().size())));
    }

    protected final void print(String line) {
        printout().out().println(line);
    }

    /** Texts that each stay on their line. */
    protected final void printLines(Stream<String> lines) {
        lines.map(PlainText::line).forEach(this::print);
    }

    /** Texts that are broken where they are too long for a line. */
    protected final void printParagraphs(List<String> texts) {
        texts.stream().flatMap(text -> Paragraph.lines(text).stream()).forEach(this::print);
    }

    /** Says how far a long run has come, where somebody reads along. */
    protected final LongConsumer progress(String what) {
        Printout printout = printout();
        return count -> {
            if (!printout.json()) {
                printout.err().println(count + " papers " + what);
            }
        };
    }
}
