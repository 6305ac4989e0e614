package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.AuditSheet;
import icequill.office.care.BookMaintenance;
import icequill.office.register.ImportOffice;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fifty people who read, a page a second each, and five who issue invoices as fast as they can, for a minute. */
class OfficeLoadTest {

    private static final int READERS = 50;
    private static final int ISSUERS = 5;
    private static final int VISITS = 400;
    private static final Duration LONG = Duration.ofSeconds(60);
    private static final List<String> PAGES = List.of("/today", "/sites", "/sites/crumb-lane-bakery", "/visits",
            "/papers",
            "/visits/brushing-1", "/rates", "/shop", "/sites?find=bakery", "/papers?find=crumb");

    @TempDir
    private Path folder;
    private final Queue<Long> nanos = new ConcurrentLinkedQueue<>();
    private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
    private final Queue<String> issued = new ConcurrentLinkedQueue<>();

    @Tag("long")
    @Test
    void readersAndIssuers_getWhatTheyAskFor_andNothingIsLostOrThereTwice() throws Exception {
        Path shop = shop();
        try (OpenOffice office = OpenOffice.of(shop)) {
            Visitor owner = office.owner();
            PAGES.forEach(page -> assertThat(owner.get(page).statusCode()).as(page).isEqualTo(200));
            issue(owner, 0);
            long before = heap();
            run(owner);
            tell(before, heap());
            assertThat(wrong).isEmpty();
            assertThat(issued).doesNotHaveDuplicates().hasSizeGreaterThan(ISSUERS);
        }
        ShopBook book = ShopBook.of(shop, OpenOffice.CLOCK);
        AuditSheet found = BookMaintenance.of(book).audit(List.of(), papers -> {
        }).orElseThrow();
        assertThat(found.findings()).isEmpty();
        assertThat(found.papers()).isEqualTo(issued.size());
    }

    /** With so many visits that are done, of one site. */
    private Path shop() throws IOException {
        Path shop = DemoShop.in(folder);
        String form = Files.readString(shop.resolve("visits/ten-minute-brushing.yaml"));
        List<Path> forms = new ArrayList<>();
        for (int i = 0; i < VISITS; i++) {
            forms.add(Files.writeString(folder.resolve("brushing-" + i + ".yaml"),
                    form.replace("Ada Quill", "Ada " + i)));
        }
        assertThat(ImportOffice.of(ShopBook.of(shop, OpenOffice.CLOCK)).run(forms, false).problems()).isEmpty();
        return shop;
    }

    private void run(Visitor owner) throws Exception {
        long end = System.nanoTime() + LONG.toNanos();
        CountDownLatch over = new CountDownLatch(1);
        try (ScheduledExecutorService readers = Executors.newScheduledThreadPool(READERS);
                ExecutorService issuers = Executors.newFixedThreadPool(ISSUERS)) {
            List<Future<?>> reading = IntStream.range(0, READERS).<Future<?>>mapToObj(own -> {
                int[] next = {own};
                return readers.scheduleAtFixedRate(() -> read(owner, PAGES.get(next[0]++ % PAGES.size())),
                        own * 1_000L / READERS, 1_000, TimeUnit.MILLISECONDS);
            }).toList();
            List<Future<?>> all = IntStream.range(0, ISSUERS).<Future<?>>mapToObj(own -> issuers.submit(() -> {
                for (int visit = 1 + own; visit < VISITS && System.nanoTime() < end; visit += ISSUERS) {
                    issue(owner, visit);
                }
            })).toList();
            for (Future<?> one : all) {
                one.get();
            }
            assertThat(over.await(Math.max(0, end - System.nanoTime()), TimeUnit.NANOSECONDS)).isFalse();
            assertThat(reading).noneMatch(Future::isDone);
            readers.shutdownNow();
        }
    }

    private void read(Visitor owner, String page) {
        long begun = System.nanoTime();
        try {
            HttpResponse<String> answer = owner.get(page);
            nanos.add(System.nanoTime() - begun);
            if (answer.statusCode() != 200) {
                wrong.add(page + " " + answer.statusCode());
            }
        } catch (RuntimeException gone) {
            if (!Thread.currentThread().isInterrupted()) {
                wrong.add(page + " " + gone);
            }
        }
    }

    private void issue(Visitor owner, int visit) {
        String page = "/visits/brushing-" + visit;
        HttpResponse<String> answer = owner.post(page + "/issue", Map.of("key", owner.key(page)));
        if (answer.statusCode() == 303) {
            issued.add(answer.headers().firstValue("Location").orElseThrow());
        } else {
            wrong.add(page + " " + answer.statusCode() + answer.body());
        }
    }

    private static long heap() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() >> 20;
    }

    private void tell(long before, long after) {
        List<Long> sorted = nanos.stream().sorted().toList();
        System.out.printf(
                "%d pages read: median %.1f ms, p99 %.1f ms, slowest %.1f ms; %d invoices; heap %d to %d MiB%n",
                sorted.size(), at(sorted, 0.5), at(sorted, 0.99), at(sorted, 1), issued.size(), before, after);
    }

    private static double at(List<Long> sorted, double share) {
        return sorted.get((int) Math.min(sorted.size() - 1L, Math.round(share * sorted.size()))) / 1e6;
    }
}
