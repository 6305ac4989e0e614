package icequill.cli.offer;

import icequill.agreement.NoticeRule.Delivery;
import icequill.agreement.SentNotice;
import icequill.cli.terminal.AgreementName;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ConstantNames;
import icequill.cli.terminal.ReaderOptions;
import icequill.life.agreement.AgreementEvent;
import icequill.life.agreement.AgreementEvent.Arrived;
import icequill.life.agreement.AgreementEvent.Told;
import icequill.office.agreement.AgreementLifeOffice;
import icequill.shop.ShopDay;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes that a customer was told of a renewal. */
@Command(name = "notice", mixinStandardHelpOptions = true, description = "Notes that the notice of an agreement's renewal was sent, or arrived. Whether it counts by the laws on record is told by: icequill agreement renewals", footerHeading = "%nExamples:%n", footer = {
        "  icequill agreement notice A-2026-004 --way certified-mail --sent 2026-12-05 --tracking \"9407 1\"",
        "  icequill agreement notice A-2026-004 --received 2026-12-08"})
public final class AgreementNoticeCommand extends BookCommand {

    @Mixin
    private AgreementName agreement = new AgreementName();

    @ArgGroup(multiplicity = "1")
    private Said said = new Said();

    @Option(names = "--paper", paramLabel = "NAME", description = "What was sent, such as the file of the notice.")
    private @Nullable String paper;

    @Option(names = "--tracking", paramLabel = "NUMBER", description = "By which it can be followed.")
    private @Nullable String tracking;

    @Option(names = "--by", paramLabel = "NAME", description = "Who sent it.")
    private @Nullable String by;

    @Option(names = "--sent", paramLabel = "DAY", description = "On which day; today if left out.")
    private @Nullable LocalDate sent;

    @Mixin
    private ReaderOptions reader = new ReaderOptions();

    /** That it went, or that it came. */
    static final class Said {

        @Option(names = "--way", required = true, paramLabel = "WAY", converter = Deliveries.class, completionCandidates = Deliveries.class, description = "How it was sent: ${COMPLETION-CANDIDATES}.")
        private @Nullable Delivery way;

        @Option(names = "--received", required = true, paramLabel = "DAY", description = "On which day the last one that was sent arrived.")
        private @Nullable LocalDate received;
    }

    /** The names of ways. */
    static final class Deliveries extends ConstantNames<Delivery> {
        Deliveries() {
            super(Delivery.class);
        }
    }

    public AgreementNoticeCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Path folder = pricing(folder());
        return show(AgreementLifeOffice.of(folder, clock(), reader.language()).note(agreement.text(),
                event(ShopDay.today(folder, clock())), Optional.empty()),
                sheet -> printLines(sheet.lines().stream()));
    }

    private AgreementEvent event(LocalDate today) {
        return Optional.ofNullable(said.way).<AgreementEvent>map(way -> new Told(new SentNotice(
                sent == null ? today : sent, way, Optional.ofNullable(paper), Optional.ofNullable(tracking),
                Optional.empty(), Optional.ofNullable(by))))
                .orElseGet(() -> new Arrived(said.received == null ? today : said.received));
    }
}
