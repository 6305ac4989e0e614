package icequill.cli.register;

import icequill.answer.EntryFlag;
import icequill.cli.terminal.EntryFlags;
import icequill.office.register.EntryChange;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds a site to the book. */
@Command(name = "add", mixinStandardHelpOptions = true, modelTransformer = EntryFlags.OfSite.class, description = "Adds a site to the shop's book.", footerHeading = "%nExample:%n", footer = "  icequill site add mill-corner --customer fernhill-hotels --name \"Mill Corner\" --kind hotel --street \"9 Mill Lane\" --city Alderton --region NY --postal-code 10999 --country US --miles 12 --tax-place alder-county")
public final class SiteAddCommand extends EntryCommand {

    @Parameters(paramLabel = "ID", description = "What the site is called in the book: small letters, digits and hyphens.")
    private String id = "";

    @Option(names = "--customer", paramLabel = "ID", description = "Who pays, by id.")
    private @Nullable String customer;

    public SiteAddCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return stored(office().site(new EntryChange(id, true, EntryFlags.given(spec(), EntryFlag.SITE)),
                Optional.ofNullable(customer)));
    }
}
