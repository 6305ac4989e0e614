package icequill.cli.offer;

import icequill.answer.agreement.ChangingSheet;
import icequill.office.agreement.ChangeWish;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Changes what an agreement looks after in mid-term. */
@Command(name = "change", mixinStandardHelpOptions = true, description = "Takes machines, or a whole site, into an agreement or out of it in mid-term. Shows what the rest of the term costs more or less, how that is figured, and the installments as they are then; with --yes it is done, and what goes back of billed installments is credited in the same step. The paper for the customer is then: icequill agreement print.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement change A-2026-002 --first-day 2026-10-01 --remove floor-3",
        "  icequill agreement change A-2026-002 --first-day 2027-01-01 --add floor-3 --agreed-by \"J. Baker\" --yes",
        "  icequill agreement change A-2026-007 --first-day 2027-02-01 --remove-site lantern-ceniza"})
public final class AgreementChangeCommand extends AgreementStepCommand {

    @Option(names = "--first-day", required = true, paramLabel = "DAY", description = "The first day with what is looked after then; within the term, after its first day.")
    private @Nullable LocalDate from;

    @Option(names = "--add", paramLabel = "MACHINE", split = ",", description = "Machines that come in, by their ids; with --add-site those of that site, all if left out.")
    private List<String> added = new ArrayList<>();

    @Option(names = "--remove", paramLabel = "MACHINE", split = ",", description = "Machines that go out.")
    private List<String> removed = new ArrayList<>();

    @Option(names = "--site", paramLabel = "SITE", description = "At which site, where the agreement is for several.")
    private @Nullable String site;

    @Option(names = "--add-site", paramLabel = "SITE", description = "A site of the same customer that comes in, on the plan and terms of the agreement.")
    private @Nullable String siteIn;

    @Option(names = "--remove-site", paramLabel = "SITE", description = "A site that goes out, with all of its machines; not the last one.")
    private @Nullable String siteOut;

    @Option(names = "--agreed-by", paramLabel = "NAME", description = "Who agreed to it.")
    private @Nullable String agreed;

    @Option(names = "--words", paramLabel = "TEXT", description = "Why.")
    private @Nullable String words;

    @Option(names = "--on", paramLabel = "DAY", description = "The day on which it was agreed on; today if left out.")
    private @Nullable LocalDate day;

    public AgreementChangeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return step((office, agreement, today, isTrial) -> office.change(agreement,
                new ChangeWish(day == null ? today : day, from == null ? today : from, Optional.ofNullable(site),
                        Optional.ofNullable(siteIn), Optional.ofNullable(siteOut), added, removed,
                        Optional.ofNullable(agreed), Optional.ofNullable(words), Optional.empty(),
                        isTrial)),
                ChangingSheet::lines, "nothing was changed yet");
    }
}
