package icequill.ledger;

import icequill.document.Invoice;
import icequill.files.disk.Folder;
import icequill.ledger.care.AuditReport;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.Pdf;
import icequill.ledger.papers.PrintedPaper;
import icequill.ledger.store.BookPlace;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.problem.Validated;
import icequill.render.InvoiceFixture;
import icequill.render.Printer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/** Longer runs than tests should take; src/docs/book.md says how to start them, and holds their results. */
public final class BookRuns {

    private static final int MOST_PAPERS = 25;
    private static final int MOST_MILLISECONDS = 40;
    private static final int SEED = 5;
    private static final int TOLD_EVERY = 20;

    private BookRuns() {
    }

    /** {@code kills 200 SQLITE} or {@code issue 10000 SQLITE}. */
    public static void main(String[] args) throws Exception {
        int count = Integer.parseInt(args[1]);
        Database database = Database.valueOf(args[2]);
        Path folder = Files.createTempDirectory("icequill-runs");
        try {
            switch (args[0]) {
            case "kills" -> kills(count, database.place(folder));
            case "issue" -> issue(count, database.place(folder));
            default -> throw new IllegalArgumentException(args[0]);
            }
        } finally {
            Folder.delete(folder);
        }
    }

    /** Kills processes that issue, each at another moment, and goes through the book after each. */
    private static void kills(int count, BookPlace place) throws Exception {
        Random random = new Random(SEED);
        List<String> told = new ArrayList<>();
        int unfinished = 0;
        Books.open(place).close();
        for (int kill = 1; kill <= count; kill++) {
            told.addAll(killed(place, random));
            unfinished += new PaperFiles(place.papers()).unfinished().size();
            try (Book book = Books.open(place)) {
                AuditReport report = Books.audit(book);
                List<String> lost = Books.read(book, reading -> told.stream()
                        .filter(number -> !reading.papers().show(number).problems().isEmpty()).toList());
                if (!report.findings().isEmpty() || !lost.isEmpty()) {
                    throw new IllegalStateException("after kill " + kill + ": " + report.findings() + " lost " + lost);
                }
                if (kill % TOLD_EVERY == 0 || kill == count) {
                    System.out.println(kill + " kills, " + report.papers() + " papers in the book, " + told.size()
                            + " told of; all audits clean, none lost; " + unfinished
                            + " files were left unfinished, and seen to");
                }
            }
        }
    }

    /** Lets a process issue some papers, then a moment more, and kills it; returns what it told. */
    private static List<String> killed(BookPlace place, Random random) throws IOException, InterruptedException {
        Process child = BookChild.start(place, "issue", "1000000");
        List<String> told = new ArrayList<>();
        try (BufferedReader out = new BufferedReader(
                new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            for (int i = random.nextInt(MOST_PAPERS); i >= 0; i--) {
                told.add(out.readLine());
            }
            TimeUnit.MILLISECONDS.sleep(random.nextInt(MOST_MILLISECONDS));
            child.toHandle().destroyForcibly();
            child.waitFor();
        }
        return told;
    }

    /** Issues invoices with real printing, one transaction each, beside printing alone. */
    private static void issue(int count, BookPlace place) throws IOException {
        Printer printer = Printer.of(place.papers());
        print(printer, "warm");
        long alone = System.nanoTime();
        for (int i = 0; i < count; i++) {
            print(printer, Books.INVOICES.number(i + 1));
        }
        alone = System.nanoTime() - alone;
        try (Book book = Books.open(place)) {
            ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
            long issuing = System.nanoTime();
            for (int i = 0; i < count; i++) {
                int seed = i;
                book.write(transaction -> transaction.issue(Books.INVOICES, Origin.NONE, numbered -> {
                    PrintedPaper small = Books.printed(numbered, seed);
                    return Validated
                            .valid(new PrintedPaper(small.date(), small.due(), small.sums(), small.facts(),
                                    small.json(),
                                    small.ratesVersion(), print(printer, numbered.number())));
                })).orElseThrow();
            }
            issuing = System.nanoTime() - issuing;
            long peak = ManagementFactory.getMemoryPoolMXBeans().stream()
                    .mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
            System.out.println(count + " invoices: printing alone " + each(alone, count) + " us each, issuing "
                    + each(issuing, count) + " us each, peak of all memory pools " + (peak >> 20) + " MiB");
            System.out.println("audit: " + Books.audit(book).findings());
        }
    }

    private static long each(long nanoseconds, int count) {
        return TimeUnit.NANOSECONDS.toMicros(nanoseconds) / count;
    }

    private static Pdf print(Printer printer, String number) {
        InvoiceFixture fixture = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").withLines(12);
        Invoice invoice = new InvoiceFixture(fixture.language(), fixture.size(), fixture.currency(), fixture.country(),
                fixture.customer(), fixture.lines(), fixture.logo(), Optional.of(number)).invoice();
        return Pdf
                .of(printer.html(invoice).then(page -> printer.pdf(invoice, page, List.of(), Map.of())).orElseThrow());
    }
}
