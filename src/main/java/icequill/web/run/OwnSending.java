package icequill.web.run;

import icequill.answer.mail.MailList;
import icequill.office.mail.SendingOffice;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.StandingShop;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Sends mails while the office is open, without being asked, as far as shop.yaml lets it. What somebody else sends at the same moment is his:
 * each mail goes out once.
 */
public final class OwnSending implements AutoCloseable {

    private static final int SECONDS_BETWEEN = 60;
    private static final int PATIENCE_SECONDS = 30;
    /** As long as the first wait of a mail that was put off: a server that is set wrongly is not asked each minute. */
    private static final Duration REST = Duration.ofMinutes(30);

    private final StandingShop shop;
    private final Consumer<Throwable> faults;
    private final ScheduledExecutorService worker = Executors
            .newSingleThreadScheduledExecutor(work -> Thread.ofPlatform().name("mail").daemon().unstarted(work));
    private Instant restsUntil = Instant.MIN;
    private volatile boolean isClosing;

    /** @param faults is told what went wrong in the program */
    public OwnSending(StandingShop shop, Consumer<Throwable> faults) {
        this.shop = shop;
        this.faults = faults;
    }

    /** Has a round each minute from now on. */
    public void begin() {
        // Nobody waits for its end, which comes with the worker's.
        var unused = worker.scheduleWithFixedDelay(() -> {
            try {
                round();
            } catch (RuntimeException | Error fault) {
                faults.accept(fault);
            }
        }, SECONDS_BETWEEN, SECONDS_BETWEEN, TimeUnit.SECONDS);
    }

    /**
     * Sends what may go now. Where something is in the way that time alone does not mend, it rests for a while.
     *
     * @return how many were tried
     */
    synchronized int round() {
        ShopBook book = shop.now();
        Instant now = book.clock().instant();
        if (now.isBefore(restsUntil)) {
            return 0;
        }
        SendingOffice office = SendingOffice.of(book);
        List<String> due = office.dueByItself().found().orElse(List.of());
        if (due.isEmpty()) {
            return 0;
        }
        Validated<MailList> sent = office.send(due, mail -> !isClosing);
        if (sent.found().filter(list -> list.problems().isEmpty()).isEmpty()) {
            restsUntil = now.plus(REST);
        }
        return sent.found().map(list -> list.mails().size()).orElse(0);
    }

    /** Waits until the mail is through that is just being sent. */
    @Override
    public void close() {
        isClosing = true;
        worker.shutdown();
        try {
            worker.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
