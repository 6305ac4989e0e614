package icequill.cli.register;

import icequill.answer.EntryFlag;
import icequill.cli.terminal.EntryFlags;
import icequill.cli.terminal.SiteName;
import icequill.office.register.EntryChange;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Changes a site of the book. */
@Command(name = "change", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfSite.class, description = "Changes what is given, and leaves the rest; an empty text takes a value out.", footerHeading = "%nExample:%n", footer = "  icequill site change hotel-fernhill --parking \"rear dock, before 9\"")
public final class SiteChangeCommand extends EntryCommand {

    @Mixin
    private SiteName site = new SiteName();

    @Option(names = "--customer", paramLabel = "ID", description = "Who pays, by id.")
    private @Nullable String customer;

    public SiteChangeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Map<String, String> given = EntryFlags.given(spec(), EntryFlag.SITE);
        return changed(!given.isEmpty() || customer != null, () -> office()
                .site(new EntryChange(id(site.text()), false, given), Optional.ofNullable(customer)));
    }
}
