package icequill.cli.offer;

import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.life.agreement.AgreementEvent.Ordered;
import icequill.office.agreement.AgreementLifeOffice;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Notes the standing purchase order of an agreement. */
@Command(name = "order", mixinStandardHelpOptions = true, description = "Notes the purchase order that stands for whatever an agreement bills from a day on: installments by the day of their invoice, visits that name none by the day on which they were made. Papers that were issued keep theirs.", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement order A-2026-002 FH-STANDING-27 --first-day 2027-01-01",
        "  icequill agreement order A-2026-002 --first-day 2027-06-01     none stands any more"})
public final class AgreementOrderCommand extends BookCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Parameters(index = "1", arity = "0..1", paramLabel = "ORDER", description = "Its number; none stands any more if left out.")
    private @Nullable String order;

    @Option(names = "--first-day", paramLabel = "DAY", description = "The first day for which it stands; today if left out.")
    private @Nullable LocalDate from;

    @Option(names = "--from", paramLabel = "NAME", description = "Who said so.")
    private @Nullable String who;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public AgreementOrderCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folder());
        LocalDate today = ShopDay.today(folder, clock());
        return show(AgreementLifeOffice.of(folder, clock(), reader.language()).note(agreement.text(),
                new Ordered(today, from == null ? today : from, Optional.ofNullable(order), Optional.ofNullable(who)),
                Optional.empty()), sheet -> printLines(sheet.lines().stream()));
    }
}
