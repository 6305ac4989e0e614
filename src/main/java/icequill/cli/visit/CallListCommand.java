package icequill.cli.visit;

import icequill.answer.call.CallListSheet;
import icequill.answer.call.CallStage;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.MostOption;
import icequill.cli.terminal.PeriodOptions;
import icequill.cli.terminal.ReaderOptions;
import icequill.cli.terminal.Table;
import icequill.office.call.CallListOffice;
import icequill.office.call.CallWish;
import java.time.Clock;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the calls of the book. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "Lists calls, the newest first: those that were taken, and visits that somebody asked for. Below, how many promised responses were kept. What is asked for has to fit all at once.", footerHeading = "%nExamples:%n", footer = {
        "  icequill call list --month 2026-05", "  icequill call list --state taken,planned",
        "  icequill call list --caller oyelaran"})
public final class CallListCommand extends BookCommand {

    @Option(names = "--site", paramLabel = "SITE", description = "Only of this site, by id.")
    private @Nullable String site;

    @Option(names = "--customer", paramLabel = "CUSTOMER", description = "Only of the sites of this customer, by id, or of accounts below him.")
    private @Nullable String customer;

    @Option(names = "--machine", paramLabel = "MACHINE", description = "Only about this machine: SITE/MACHINE, or its id alone with --site.")
    private @Nullable String machine;

    @Option(names = "--caller", paramLabel = "NAME", description = "Only those of this person; a part of the name is enough.")
    private @Nullable String caller;

    @Option(names = "--find", paramLabel = "TEXT", description = "Only those with these words, or parts of words, in their id, site, caller, symptom or purchase order.")
    private @Nullable String find;

    @Option(names = "--state", paramLabel = "STATE", split = ",", description = "Only in one of these states: taken, planned, done, closed, withdrawn.")
    private Set<CallStage> states = EnumSet.noneOf(CallStage.class);

    @Mixin
    private PeriodOptions period = new PeriodOptions();

    @Mixin
    private MostOption most = new MostOption();

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public CallListCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        CallWish wish = new CallWish(Optional.ofNullable(site), Optional.ofNullable(customer),
                Optional.ofNullable(machine), Optional.ofNullable(caller), Optional.ofNullable(find), period.period(),
                states, most.most());
        return show(CallListOffice.of(folder(), clock()).calls(wish, reader.language()), this::print);
    }

    private void print(CallListSheet sheet) {
        print(sheet.rows().isEmpty() ? sheet.none() : Table.of(sheet.head(), sheet.rows(), sheet.head().size()));
        print(sheet.responses());
        if (sheet.data().hasMore()) {
            print(sheet.more(2 * most.most()));
        }
    }
}
