package icequill.cli.visit;

import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.CallName;
import icequill.cli.terminal.ReaderOptions;
import icequill.cli.terminal.SiteName;
import icequill.office.asking.AskingOffice;
import icequill.office.asking.VisitDialogue;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.BufferedReader;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Asks for a finished visit, question by question. */
@Command(name = "new", mixinStandardHelpOptions = true, description = "Asks in a row what a finished visit was, shows its price, and stores it in the shop's book or writes its form. An empty answer takes what is proposed, or skips; ? explains; < goes back; the end of input (Ctrl-D) leaves, and nothing is stored.", footerHeading = "%nExamples:%n", footer = {
        "  icequill visit new hotel-fernhill", "  icequill visit new hotel-fernhill --lang es",
        "  icequill visit new hotel-fernhill --call hotel-fernhill-2026-08-31",
        "  icequill visit new hotel-fernhill --form typed.yaml"})
public final class VisitNewCommand extends BookCommand {

    private final BufferedReader typed;

    @Mixin
    private SiteName site = new SiteName();

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    @Option(names = "--form", paramLabel = "FILE", description = "Write the visit's form into this file, which must not be there yet, and do not ask what is to become of it.")
    private @Nullable Path form;

    @Option(names = "--call", paramLabel = "CALL", completionCandidates = CallName.Known.class, description = "The call that the visit answers; who asked, why, and what was ordered is taken from it.")
    private @Nullable String call;

    /** @param typed what is answered, a line each */
    public VisitNewCommand(Clock clock, BufferedReader typed) {
        super(clock);
        this.typed = typed;
    }

    @Override
    public Integer call() {
        Optional<Path> file = Optional.ofNullable(form);
        Optional<Problem> inTheWay = file.flatMap(AskingOffice::inTheWay);
        if (inTheWay.isPresent()) {
            return printout().problems(List.of(inTheWay.get()));
        }
        AskingOffice office = AskingOffice.of(pricing(folder()), clock());
        Validated<VisitDialogue> begun = call == null
                ? office.about(id(site.text()), reader.language())
                : office.answering(call, id(site.text()), reader.language());
        return switch (begun) {
        case Validated.Valid<VisitDialogue> dialogue ->
            new VisitConversation(office, dialogue.value(), typed, printout(), file).run().status();
        case Validated.Invalid<VisitDialogue> invalid -> printout().problems(invalid.problems());
        };
    }
}
