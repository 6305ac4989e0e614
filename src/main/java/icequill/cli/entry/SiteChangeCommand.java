package icequill.cli.entry;

import icequill.answer.EntryFlag;
import icequill.office.register.EntryChange;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Changes a site of the book. */
@Command(name = "change", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfSite.class, description = "Changes what is given, and leaves the rest; an empty text takes a value out.")
public final class SiteChangeCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "What the site is called in the book: small letters, digits and hyphens.")
    private String id = "";

    @Option(names = "--customer", paramLabel = "ID", description = "Who pays, by id.")
    private @Nullable String customer;

    public SiteChangeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return stored(office().site(new EntryChange(id, false, EntryFlags.given(spec(), EntryFlag.SITE)),
                Optional.ofNullable(customer)));
    }
}
