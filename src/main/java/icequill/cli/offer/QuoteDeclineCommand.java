package icequill.cli.offer;

import icequill.answer.shown.QuoteStanding;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ConstantNames;
import icequill.cli.terminal.PaperName;
import icequill.explain.ConstantKey;
import icequill.life.quote.QuoteEvent.Refusal;
import icequill.life.quote.RefusalReason;
import icequill.office.quoting.QuoteLifeOffice;
import icequill.shop.ShopDay;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes that a customer declined a quote. */
@Command(name = "decline", mixinStandardHelpOptions = true, description = "Notes that the customer declined a quote, and why. He may still accept it later.", footerHeading = "%nExample:%n", footer = "  icequill quote decline MQ-2026-00003 --reason price --words \"Has an offer for 900.\"")
public final class QuoteDeclineCommand extends BookCommand {

    @Mixin
    private PaperName paper = new PaperName();

    @Option(names = "--reason", required = true, paramLabel = "REASON", converter = Reasons.class, completionCandidates = Reasons.class, description = "Why: ${COMPLETION-CANDIDATES}.")
    private RefusalReason reason = RefusalReason.OTHER;

    @Option(names = "--words", paramLabel = "TEXT", description = "What the customer said.")
    private @Nullable String words;

    @Option(names = "--on", paramLabel = "DAY", description = "On which day; today if left out.")
    private @Nullable LocalDate day;

    /** The names of reasons. */
    static final class Reasons extends ConstantNames<RefusalReason> {
        Reasons() {
            super(RefusalReason.class);
        }
    }

    public QuoteDeclineCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Refusal no = new Refusal(day == null ? ShopDay.today(folder(), clock()) : day, reason,
                Optional.ofNullable(words));
        return show(QuoteLifeOffice.of(folder(), clock()).decline(paper.text(), no), this::tell);
    }

    private void tell(QuoteStanding standing) {
        print("Declined: " + standing.number() + standing.declined()
                .map(no -> " on " + no.day() + ", " + ConstantKey.words(no.reason().name())).orElse(""));
    }
}
