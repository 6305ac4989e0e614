package icequill.cli.offer;

import icequill.cli.terminal.ConstantNames;
import icequill.life.agreement.NoticeWay;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How somebody said that an agreement is to end. */
final class NoticeOptions {

    @Option(names = "--on", paramLabel = "DAY", description = "The day on which it was received; today if left out.")
    private @Nullable LocalDate day;

    @Option(names = "--way", required = true, paramLabel = "WAY", converter = Ways.class, completionCandidates = Ways.class, description = "How: ${COMPLETION-CANDIDATES}.")
    private NoticeWay way = NoticeWay.MAIL;

    @Option(names = "--from", paramLabel = "NAME", description = "Who said so.")
    private @Nullable String who;

    @Option(names = "--words", paramLabel = "TEXT", description = "What he or she said.")
    private @Nullable String words;

    /** The names of ways. */
    static final class Ways extends ConstantNames<NoticeWay> {
        Ways() {
            super(NoticeWay.class);
        }
    }

    LocalDate day(LocalDate today) {
        return day == null ? today : day;
    }

    NoticeWay way() {
        return way;
    }

    Optional<String> who() {
        return Optional.ofNullable(who);
    }

    Optional<String> words() {
        return Optional.ofNullable(words);
    }
}
