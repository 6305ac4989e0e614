package icequill.cli.terminal;

import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What lives in the book, named before what is done with it: only a verb after it says what to do. */
public abstract class Noun implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public final void run() {
        CommandLine line = spec.commandLine();
        throw new ParameterException(line, "what to do is missing: one of " + line.getSubcommands().keySet().stream()
                .collect(Collectors.joining(", ")));
    }
}
