package icequill.cli.terminal;

import icequill.answer.BookedPaper;
import icequill.answer.paper.PaperList;
import icequill.office.care.PaperOffice;
import icequill.office.care.PaperWish;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What all commands share that look for issued papers. */
public abstract class FoundCommand extends BookCommand {

    @Parameters(paramLabel = "TEXT", arity = "0..*", description = "Words to look for; of names and addresses, beginnings are enough.")
    private List<String> words = new ArrayList<>();

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Option(names = "--caller", paramLabel = "NAME", description = "Only papers for calls of this person; a part of the name is enough.")
    private @Nullable String caller;

    @Option(names = "--store", paramLabel = "NUMBER", description = "Only papers for the site that the customer gave this number.")
    private @Nullable String store;

    @Mixin
    private MostOption most = new MostOption();

    protected FoundCommand(Clock clock) {
        super(clock);
    }

    /** Of which kinds; none for all. */
    protected abstract List<String> kinds();

    /** In which state; empty for any. */
    protected Optional<String> state() {
        return Optional.empty();
    }

    @Override
    public final Integer call() {
        PaperWish wish = new PaperWish(String.join(" ", words), period.period(), kinds(), state(),
                Optional.ofNullable(caller), Optional.ofNullable(store), most.most());
        return found(wish);
    }

    /** Looks for the papers, and shows them. */
    protected int found(PaperWish wish) {
        return show(PaperOffice.of(folder(), clock()).find(wish).map(PaperList::new),
                found -> printTable(BookedPaper.HEAD, found.papers().stream().map(BookedPaper::row).toList()));
    }

    /** Papers as rows, or that there are none. */
    protected final void printTable(List<String> head, List<List<String>> rows) {
        print(rows.isEmpty() ? "No paper fits." : Table.of(head, rows, head.size() - 1));
    }
}
