package icequill.cli.offer;

import icequill.answer.agreement.EndingSheet;
import icequill.cli.terminal.ConstantNames;
import icequill.life.agreement.NoticeBy;
import icequill.office.agreement.NoticeWish;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Ends an agreement by notice. */
@Command(name = "end", mixinStandardHelpOptions = true, description = "Ends an agreement by notice, with its days of notice. Shows what goes back of what was paid ahead; with --yes it is done, and the credit notes are issued in the same step.", footerHeading = "%nExample:%n", footer = "  icequill agreement end A-2026-007 --way mail --on 2026-12-01 --from \"J. Baker\"")
public final class AgreementEndCommand extends AgreementStepCommand {

    @Mixin
    private NoticeOptions notice = new NoticeOptions();

    @Option(names = "--by", paramLabel = "WHO", converter = Parties.class, completionCandidates = Parties.class, description = "Who ends it: ${COMPLETION-CANDIDATES}; the customer if left out.")
    private NoticeBy by = NoticeBy.CUSTOMER;

    @Option(names = "--last-day", paramLabel = "DAY", description = "Its last day; the first that its days of notice allow if left out.")
    private @Nullable LocalDate lastDay;

    /** The names of those who may end it. */
    static final class Parties extends ConstantNames<NoticeBy> {
        Parties() {
            super(NoticeBy.class);
        }
    }

    public AgreementEndCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return step((office, agreement, today, isTrial) -> office.end(agreement,
                new NoticeWish(notice.day(today), Optional.ofNullable(lastDay), by, notice.way(), notice.who(),
                        notice.words(), Optional.empty(), isTrial)),
                EndingSheet::lines, "nothing was ended yet");
    }
}
