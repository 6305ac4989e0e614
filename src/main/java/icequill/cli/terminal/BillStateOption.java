package icequill.cli.terminal;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which state the invoices are in that somebody looks for. */
public final class BillStateOption {

    @Option(names = "--state", paramLabel = "STATE", description = "Only invoices in this state: open (something is owed), part-paid, paid, credited (all was given back).")
    private @Nullable String state;

    public Optional<String> state() {
        return Optional.ofNullable(state);
    }
}
