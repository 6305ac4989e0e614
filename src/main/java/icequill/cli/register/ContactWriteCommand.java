package icequill.cli.register;

import icequill.answer.EntryFlag;
import icequill.answer.EntrySheet;
import icequill.cli.terminal.EntryFlags;
import icequill.office.register.ContactChange;
import icequill.problem.Validated;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What all commands share that change contacts. */
abstract class ContactWriteCommand extends EntryCommand {

    private final ContactChange.Kind kind;

    @Parameters(paramLabel = "NAME", description = "The person or the department.")
    private String name = "";

    @ArgGroup(multiplicity = "1")
    private Whose whose = new Whose();

    /** Whose contact it is. */
    static final class Whose {

        @Option(names = "--customer", paramLabel = "ID", description = "A contact of this customer.")
        private @Nullable String customer;

        @Option(names = "--site", paramLabel = "ID", description = "A contact of this site.")
        private @Nullable String site;
    }

    ContactWriteCommand(Clock clock, ContactChange.Kind kind) {
        super(clock);
        this.kind = kind;
    }

    @Override
    public final Integer call() {
        Map<String, String> parts = new LinkedHashMap<>();
        EntryFlags.given(spec(), EntryFlag.CONTACT).forEach((flag, value) -> parts.put(flag.substring(2), value));
        ContactChange change = new ContactChange(kind, name, parts);
        Validated<EntrySheet> changed = whose.customer == null
                ? office().siteContact(id(String.valueOf(whose.site)), change)
                : office().customerContact(id(whose.customer), change);
        return stored(changed);
    }
}
