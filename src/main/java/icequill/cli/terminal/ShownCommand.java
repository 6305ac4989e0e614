package icequill.cli.terminal;

import icequill.answer.EntrySheet;
import icequill.answer.shown.PaperSheet;
import icequill.answer.shown.Shown;
import icequill.office.care.ShowOffice;
import icequill.office.care.Shows;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Mixin;

/** What all commands share that show what has a name in the book. */
public abstract class ShownCommand extends BookCommand {

    private static final int TEXT_COLUMNS = 3;

    private final Shows what;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    /** @param what of which kind the thing is to be */
    protected ShownCommand(Clock clock, Shows what) {
        super(clock);
        this.what = what;
    }

    /** As somebody named it. */
    protected abstract String named();

    @Override
    public final Integer call() {
        return show(ShowOffice.of(folder(), clock()).show(form(named()), what, reader.language()),
                this::print);
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
