package icequill.cli.offer;

import icequill.answer.agreement.EndingSheet;
import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ConstantNames;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.ReaderOptions;
import icequill.life.agreement.NoticeBy;
import icequill.office.agreement.AgreementLifeOffice;
import icequill.office.agreement.NoticeWish;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Ends an agreement by notice. */
@Command(name = "end", mixinStandardHelpOptions = true, description = "Ends an agreement by notice, with its days of notice. Shows what goes back of what was paid ahead; with --yes it is done, and the credit notes are issued in the same step.", footerHeading = "%nExample:%n", footer = "  icequill agreement end A-2026-007 --way mail --on 2026-12-01 --from \"J. Baker\"")
public final class AgreementEndCommand extends BookCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Mixin
    private NoticeOptions notice = new NoticeOptions();

    @Option(names = "--by", paramLabel = "WHO", converter = Parties.class, completionCandidates = Parties.class, description = "Who ends it: ${COMPLETION-CANDIDATES}; the customer if left out.")
    private NoticeBy by = NoticeBy.CUSTOMER;

    @Option(names = "--last-day", paramLabel = "DAY", description = "Its last day; the first that its days of notice allow if left out.")
    private @Nullable LocalDate lastDay;

    @Option(names = "--yes", description = "Does it.")
    private boolean yes;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

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
        Path folder = pricing(folder());
        Validated<EndingSheet> result = AgreementLifeOffice.of(folder, clock(), reader.language()).end(
                agreement.text(), new NoticeWish(notice.day(ShopDay.today(folder, clock())),
                        Optional.ofNullable(lastDay), by, notice.way(), notice.who(), notice.words(),
                        Optional.empty(), !yes));
        int status = show(result, sheet -> printLines(sheet.lines().stream()));
        return result.found().filter(ending -> ending.data().tried()).isPresent() ? asked() : status;
    }

    private int asked() {
        return printout().json()
                ? ExitCode.PROBLEMS.status()
                : printout().problems(List.of(new Problem(Code.MISSING, Place.NOWHERE, "nothing was ended yet",
                        "--yes, once what goes back is what you mean")));
    }
}
