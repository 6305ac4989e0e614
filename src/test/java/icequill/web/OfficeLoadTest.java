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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fifty people who read, a page a second each, and five who issue an invoice a second each, for a minute. */
class OfficeLoadTest {

    private static final int READERS = 50;
    private static final int ISSUERS = 5;
    private static final int SITES = 40;
    private static final int VISITS = 420;
    private static final LocalDate FIRST = LocalDate.of(2026, 5, 13);
    /** Of the program, before it is measured. */
    private static final Duration WARMING = Duration.ofSeconds(15);
    private static final Duration LONG = Duration.ofSeconds(60);
    private static final List<String> PAGES = List.of("/today", "/sites", "/sites/bakery-7", "/visits", "/papers",
            "/visits/brushing-1", "/rates", "/shop", "/sites?find=bakery", "/papers?find=bakery");

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

    /** With bakeries like the one of the demo, and visits of half a year that are done, two a day, of each in turn. */
    private Path shop() throws IOException {
        Path shop = DemoShop.in(folder);
        String site = Files.readString(shop.resolve("sites/crumb-lane-bakery.yaml"));
        String visit = Files.readString(shop.resolve("visits/ten-minute-brushing.yaml"));
        List<Path> forms = new ArrayList<>();
        for (int i = 0; i < SITES; i++) {
            forms.add(Files.writeString(folder.resolve("bakery-" + i + ".yaml"),
                    site.replace("id: crumb-lane-bakery", "id: bakery-" + i)));
        }
        for (int i = 0; i < VISITS; i++) {
            forms.add(Files.writeString(folder.resolve("brushing-" + i + ".yaml"),
                    visit.replace("crumb-lane-bakery", "bakery-" + i % SITES)
                            .replace("2026-05-13T10", FIRST.plusDays(i / 2) + "T1" + i % 2)));
        }
        assertThat(ImportOffice.of(ShopBook.of(shop, OpenOffice.CLOCK)).run(forms, false).problems()).isEmpty();
        return shop;
    }

    private void run(Visitor owner) throws Exception {
        CountDownLatch over = new CountDownLatch(1);
        long begun = System.nanoTime() + WARMING.toNanos();
        try (ScheduledExecutorService people = Executors.newScheduledThreadPool(READERS + ISSUERS)) {
            List<Future<?>> at = new ArrayList<>();
            for (int reader = 0; reader < READERS; reader++) {
                AtomicInteger next = new AtomicInteger(reader);
                at.add(eachSecond(people, reader * 1_000L / READERS,
                        () -> read(owner, begun, PAGES.get(next.getAndIncrement() % PAGES.size()))));
            }
            for (int issuer = 0; issuer < ISSUERS; issuer++) {
                AtomicInteger next = new AtomicInteger(1 + issuer);
                at.add(eachSecond(people, issuer * 1_000L / ISSUERS, () -> issue(owner, next.getAndAdd(ISSUERS))));
            }
            assertThat(over.await(WARMING.plus(LONG).toMillis(), TimeUnit.MILLISECONDS)).isFalse();
            assertThat(at).noneMatch(Future::isDone);
            people.shutdown();
            assertThat(people.awaitTermination(LONG.toMillis(), TimeUnit.MILLISECONDS)).isTrue();
        }
    }

    private static Future<?> eachSecond(ScheduledExecutorService people, long first, Runnable work) {
        return people.scheduleAtFixedRate(work, first, 1_000, TimeUnit.MILLISECONDS);
    }

    private void read(Visitor owner, long from, String page) {
        long begun = System.nanoTime();
        try {
            HttpResponse<String> answer = owner.get(page);
            if (begun >= from) {
                nanos.add(System.nanoTime() - begun);
            }
            if (answer.statusCode() != 200) {
                wrong.add(page + " " + answer.statusCode());
            }
        } catch (RuntimeException gone) {
            wrong.add(page + " " + gone);
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
