package icequill.cli.visit;

import icequill.answer.history.VisitListSheet;
import icequill.answer.history.VisitState;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.MostOption;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.ReaderOptions;
import icequill.cli.terminal.Table;
import icequill.office.care.VisitListOffice;
import icequill.office.care.VisitWish;
import java.time.Clock;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the book's visits. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists visits, planned and done, the newest first. What is asked for has to fit all at once.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit list --month 2026-05", "  icequill visit list --site hotel-fernhill --state done,planned",
        "  icequill visit list --machine hotel-fernhill/lobby-bar",
        "  icequill visit list --by quill --from 2026-05-01",
        "  icequill visit list --caller oyelaran"})
public final class VisitListCommand extends BookCommand {

    @Option(names = "--site", paramLabel = "SITE", description = "Only at this site, by id.")
    private @Nullable String site;

    @Option(names = "--customer", paramLabel = "CUSTOMER", description = "Only at the sites of this customer, by id, or of accounts below him.")
    private @Nullable String customer;

    @Option(names = "--machine", paramLabel = "MACHINE", description = "Only where something was done at this machine: SITE/MACHINE, or its id alone with --site.")
    private @Nullable String machine;

    @Option(names = "--by", paramLabel = "NAME", description = "Only with this technician; a part of the name is enough.")
    private @Nullable String technician;

    @Option(names = "--caller", paramLabel = "NAME", description = "Only those that this person asked for; a part of the name is enough.")
    private @Nullable String caller;

    @Option(names = "--find", paramLabel = "TEXT", description = "Only those with these words, or parts of words, in their id, site, people, caller, purchase order or machines.")
    private @Nullable String find;

    @Option(names = "--state", paramLabel = "STATE", split = ",", description = "Only in one of these states: planned, done (and not billed), billed, withdrawn.")
    private Set<VisitState> states = EnumSet.noneOf(VisitState.class);

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Mixin
    private MostOption most = new MostOption();

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public VisitListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        VisitWish wish = new VisitWish(Optional.ofNullable(site), Optional.ofNullable(customer),
                Optional.ofNullable(machine), Optional.ofNullable(technician), Optional.ofNullable(caller),
                Optional.ofNullable(find), false,
                period.period(), states, most.most());
        return show(VisitListOffice.of(folder(), clock()).visits(wish, reader.language()),
                this::print);
    }

    private void print(VisitListSheet sheet) {
        print(sheet.rows().isEmpty() ? sheet.none() : Table.of(sheet.head(), sheet.rows(), sheet.head().size()));
        if (sheet.data().hasMore()) {
            print(sheet.more(2 * most.most()));
        }
    }
}
