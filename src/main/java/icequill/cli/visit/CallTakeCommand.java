package icequill.cli.visit;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.cli.terminal.SiteName;
import icequill.office.call.CallOffice;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes a call. */
@Command(name = "take", mixinStandardHelpOptions = true, description = "Takes a call, and tells what is at hand of its site: what is past due, the agreement in force and the response it promises, calls that wait, the last visits.", footerHeading = "%nExamples:%n", footer = {
        "  icequill call take hotel-fernhill --by Bram --symptom \"No ice.\"",
        "  icequill call take hotel-fernhill --by Bram --symptom \"No ice.\" --machine lobby-bar --since \"this morning\" --purchase-order FH-1 --limit 300 --approver \"Chef Bram\""})
public final class CallTakeCommand extends BookCommand {

    @Mixin
    private SiteName site = new SiteName();

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who calls.")
    private String by = "";

    @Option(names = "--symptom", required = true, paramLabel = "TEXT", description = "What is wrong.")
    private String symptom = "";

    @Option(names = "--machine", paramLabel = "MACHINE", description = "The machine that it is about, by id.")
    private @Nullable String machine;

    @Option(names = "--since", paramLabel = "TEXT", description = "Since when it is so, in the caller's words.")
    private @Nullable String since;

    @Option(names = "--at", paramLabel = "TIME", description = "When the call came, as 2026-05-13T14:20. Default: now.")
    private @Nullable String at;

    @Option(names = "--promised", paramLabel = "TIME", description = "By when somebody was promised, as 2026-05-13T17:00. Default: by the agreement in force.")
    private @Nullable String promised;

    @Option(names = "--purchase-order", paramLabel = "NUMBER", description = "The customer's purchase order.")
    private @Nullable String purchaseOrder;

    @Option(names = "--limit", paramLabel = "AMOUNT", description = "Not to be exceeded, before tax.")
    private @Nullable BigDecimal limit;

    @Option(names = "--approver", paramLabel = "NAME", description = "Who allows the work.")
    private @Nullable String approver;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public CallTakeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Map<String, String> told = CallStepCommand.told("by", by, "symptom", symptom);
        CallStepCommand.put(told, "machine", machine);
        CallStepCommand.put(told, "since", since);
        CallStepCommand.put(told, "at", at);
        CallStepCommand.put(told, "promised", promised);
        CallStepCommand.put(told, "purchaseOrder", purchaseOrder);
        CallStepCommand.put(told, "limit", Optional.ofNullable(limit).map(BigDecimal::toPlainString).orElse(null));
        CallStepCommand.put(told, "approver", approver);
        return show(CallOffice.of(folder(), clock(), reader.language()).take(id(site.text()), told),
                sheet -> printLines(sheet.lines().stream()));
    }
}
