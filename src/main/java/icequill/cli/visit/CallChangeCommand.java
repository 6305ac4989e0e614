package icequill.cli.visit;

import icequill.answer.call.CallSheet;
import icequill.office.call.CallOffice;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Corrects a call. */
@Command(name = "change", mixinStandardHelpOptions = true, description = "Corrects what a call says, until it is closed; what is not given stays, what is given empty is taken away. Who changed what, and when, stays on record.", footerHeading = "%nExamples:%n", footer = {
        "  icequill call change hotel-fernhill-2026-08-31 --symptom \"Small cubes.\" --machine lobby-bar",
        "  icequill call change hotel-fernhill-2026-08-31 --since \"\""})
public final class CallChangeCommand extends CallStepCommand {

    @Option(names = "--by", paramLabel = "NAME", description = "Who called.")
    private @Nullable String by;

    @Option(names = "--symptom", paramLabel = "TEXT", description = "What is wrong.")
    private @Nullable String symptom;

    @Option(names = "--machine", paramLabel = "MACHINE", description = "The machine that it is about, by id.")
    private @Nullable String machine;

    @Option(names = "--since", paramLabel = "TEXT", description = "Since when it is so, in the caller's words.")
    private @Nullable String since;

    @Option(names = "--purchase-order", paramLabel = "NUMBER", description = "The customer's purchase order.")
    private @Nullable String purchaseOrder;

    @Option(names = "--limit", paramLabel = "AMOUNT", description = "Not to be exceeded, before tax.")
    private @Nullable String limit;

    @Option(names = "--approver", paramLabel = "NAME", description = "Who allows the work.")
    private @Nullable String approver;

    public CallChangeCommand(Clock clock) {
        super(clock);
    }

    @Override
    Validated<CallSheet> step(CallOffice office, String id) {
        Map<String, String> told = new LinkedHashMap<>();
        put(told, "by", by);
        put(told, "symptom", symptom);
        put(told, "machine", machine);
        put(told, "since", since);
        put(told, "purchaseOrder", purchaseOrder);
        put(told, "limit", limit);
        put(told, "approver", approver);
        return office.change(id, told, Optional.empty());
    }
}
