package icequill.cli.offer;

import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.life.agreement.AgreementEvent.Refusal;
import icequill.office.agreement.AgreementLifeOffice;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Notes that an agreement is not to go on. */
@Command(name = "refuse", mixinStandardHelpOptions = true, description = "Notes that the customer does not want an agreement to go on after its term: it ends with it.", footerHeading = "%nExample:%n", footer = "  icequill agreement refuse A-2026-005 --way certified-mail --on 2026-12-01 --from \"J. Baker\"")
public final class AgreementRefuseCommand extends BookCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Mixin
    private NoticeOptions notice = new NoticeOptions();

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public AgreementRefuseCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folder());
        return show(AgreementLifeOffice.of(folder, clock(), reader.language()).note(agreement.text(),
                new Refusal(notice.day(ShopDay.today(folder, clock())), notice.way(), notice.who(), notice.words()),
                Optional.empty()), sheet -> printLines(sheet.lines().stream()));
    }
}
