package icequill.cli.book;

import icequill.cli.terminal.BookCommand;
import icequill.office.care.RatesOffice;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells about one version of the rates. */
@Command(name = "show", mixinStandardHelpOptions = true, description = "Tells what a version of the rates holds, and what is different in it from the one before it, value by value.", footerHeading = "%nExamples:%n", footer = {
        "  icequill rates show", "  icequill rates show 9661cb12"})
public final class RatesShowCommand extends BookCommand {

    @Parameters(paramLabel = "VERSION", arity = "0..1", description = "The version, by its id or the first four or more letters of it. Default: the one in force.")
    private @Nullable String version;

    public RatesShowCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(RatesOffice.of(folder(), clock()).show(Optional.ofNullable(version)),
                sheet -> printLines(sheet.lines()));
    }
}
