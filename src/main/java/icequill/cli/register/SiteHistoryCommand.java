package icequill.cli.register;

import icequill.cli.terminal.SiteName;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what was done at a site. */
@Command(name = "history", mixinStandardHelpOptions = true, description = "Tells what was done at a site, the oldest first: visits and who asked for them, who came, what was found, done, put in and recommended, what is due next, and which papers bill it.", footerHeading = "%nExamples:%n", footer = {
        "  icequill site history hotel-fernhill --month 2026-05",
        "  icequill site history hotel-fernhill --machine lobby-bar --from 2026-01-01 --lang es"})
public final class SiteHistoryCommand extends HistoryCommand {

    @Mixin
    private SiteName site = new SiteName();

    @Option(names = "--machine", paramLabel = "MACHINE", description = "Only this machine, by id.")
    private @Nullable String machine;

    public SiteHistoryCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return history(id(site.text()), Optional.ofNullable(machine));
    }
}
