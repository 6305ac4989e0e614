package icequill.cli.offer;

import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ReaderOptions;
import icequill.office.agreement.AgreementLifeOffice;
import icequill.office.agreement.RenewalWish;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Renews an agreement. */
@Command(name = "renew", mixinStandardHelpOptions = true, description = "Renews an agreement that nobody refused: another one for its next term, with its machines and the price of the renewal; nothing is typed again.", footerHeading = "%nExample:%n", footer = "  icequill agreement renew A-2026-004 --agreed-by \"J. Baker\"")
public final class AgreementRenewCommand extends BookCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @Option(names = "--agreed-by", paramLabel = "NAME", description = "Who agreed to it; needed while the customer may still refuse, and where no notice counts.")
    private @Nullable String agreed;

    @Option(names = "--on", paramLabel = "DAY", description = "On which day; today if left out.")
    private @Nullable LocalDate day;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    public AgreementRenewCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folder());
        return show(AgreementLifeOffice.of(folder, clock(), reader.language()).renew(agreement.text(),
                new RenewalWish(day == null ? ShopDay.today(folder, clock()) : day, Optional.ofNullable(agreed),
                        Optional.empty())),
                sheet -> printLines(sheet.lines().stream()));
    }
}
