package icequill.cli.visit;

import icequill.answer.call.CallSheet;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.CallName;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.call.CallOffice;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;

/** What the commands share that look at one call, or take it a step further. */
abstract class CallStepCommand extends BookCommand {

    @Mixin
    private CallName call = new CallName();

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    CallStepCommand(Clock clock) {
        super(clock);
    }

    /** Does it, and tells the call as it is then. */
    abstract Validated<CallSheet> step(CallOffice office, String id);

    @Override
    public final Integer call() {
        return show(step(CallOffice.of(folder(), clock(), reader.language()), call.text()),
                sheet -> printLines(sheet.lines().stream()));
    }

    /** Adds what was given; what was not is left out. */
    static Map<String, String> put(Map<String, String> told, String key, @Nullable Object value) {
        if (value != null) {
            told.put(key, value.toString());
        }
        return told;
    }

    /** What was given under two keys. */
    static Map<String, String> told(String key, @Nullable Object value, String other, @Nullable Object more) {
        return put(put(new LinkedHashMap<>(), key, value), other, more);
    }
}
