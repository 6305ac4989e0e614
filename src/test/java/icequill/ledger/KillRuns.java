package icequill.ledger;

import icequill.ledger.care.AuditReport;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Folder;
import icequill.problem.Checked;
import icequill.problem.Code;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;

/**
 * Kills processes at work in a book, each at another moment, and looks after each kill whether all that was told is there and the
 * audit is clean: {@code credit 200 SQLITE 1}, or {@code backup}, {@code restore}, {@code import}, {@code forget}. The last number
 * is the seed; another one kills at other moments.
 */
public final class KillRuns {

    static final Series CREDITS = new Series(PaperKind.CREDIT_NOTE, "", 2026);
    private static final int IMPORTED = 50;
    private static final int MOST_TOLD = 12;
    private static final int MOST_MILLISECONDS = 120;
    private static final int TOLD_EVERY = 5;
    private static final int RESTORED = 100;

    private KillRuns() {
    }

    public static void main(String[] args) throws Exception {
        int kills = Integer.parseInt(args[1]);
        Database database = Database.valueOf(args[2]);
        Random random = new Random(Long.parseLong(args[3]));
        Path folder = Files.createTempDirectory("icequill-kills");
        try {
            String result = args[0].equals("restore")
                    ? restored(kills, database, folder, random)
                    : worked(args[0], kills, database.place(folder), random);
            System.out.println(args[0] + ", " + database + ": " + kills + " kills, " + result);
        } finally {
            Folder.delete(folder);
        }
    }

    /** What a process does until it is killed; it tells each time that it was done. */
    static void work(BookPlace place, String kind) {
        long self = ProcessHandle.current().pid();
        try (Book book = Books.open(place)) {
            for (int i = 0; i < Integer.MAX_VALUE; i++) {
                System.out.println(once(book, place, kind, self + "-" + i, i));
            }
        }
    }

    private static String once(Book book, BookPlace place, String kind, String name, int seed) {
        return switch (kind) {
        case "credit" -> {
            String invoice = Books.issue(book, seed).orElseThrow().number();
            yield book.write(open -> open.issue(CREDITS, Origin.NONE.correcting(invoice),
                    numbered -> Checked.sound(Books.printed(numbered, seed)))
                    .then(credit -> open.issue(Books.INVOICES, Origin.NONE.replacing(invoice),
                            numbered -> Checked.sound(Books.printed(numbered, seed)))
                            .map(again -> credit.number() + " " + again.number())))
                    .orElseThrow();
        }
        case "backup" -> {
            Path file = place.papers().resolveSibling("backups").resolve(name + ".backup");
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
            yield file.toString();
        }
        case "import" -> {
            book.write(open -> {
                IntStream.range(0, IMPORTED).forEach(i -> open.register().add(customer(name + "-" + i)).orElseThrow());
                return Checked.sound(true);
            }).orElseThrow();
            yield name;
        }
        case "forget" -> {
            book.write(open -> open.register().add(customer(name))).orElseThrow();
            book.write(open -> open.register().forget(name, java.time.LocalDate.of(2026, 5, 14))).orElseThrow();
            yield name;
        }
        default -> throw new IllegalArgumentException(kind);
        };
    }

    private static CustomerEntry customer(String id) {
        return CustomerEntry.of(id, Entered.group().customer());
    }

    private static String worked(String kind, int kills, BookPlace place, Random random) throws Exception {
        List<String> told = new ArrayList<>();
        try (Book book = Books.open(place)) {
            for (int i = 0; i < 20; i++) {
                Books.issue(book, i).orElseThrow();
            }
        }
        for (int kill = 1; kill <= kills; kill++) {
            told.addAll(killed(BookChild.start(place, "work", kind), random));
            try (Book book = Books.open(place)) {
                List<?> findings = Books.audit(book).findings();
                if (!findings.isEmpty()) {
                    throw new IllegalStateException("after kill " + kill + ": " + findings);
                }
                check(kind, book, told);
            }
            tell(kind, kill, told.size());
        }
        return told.size() + " told of; all audits clean, none lost, none half done";
    }

    private static void tell(String kind, int kills, int told) {
        if (kills % TOLD_EVERY == 0) {
            System.out.println(kind + " " + kills + " kills, " + told + " told of, all is well");
        }
    }

    private static void check(String kind, Book book, List<String> told) {
        boolean isWell = switch (kind) {
        case "credit" -> told.stream().flatMap(pair -> List.of(pair.split(" ", -1)).stream())
                .allMatch(number -> book.read(open -> open.papers().show(number)).problems().isEmpty())
                && isPaired(book);
        case "backup" -> told.isEmpty() || Book.verify(Path.of(told.getLast()), Books.READER, Books.UNHEARD)
                .orElseThrow().findings().isEmpty();
        case "import" -> {
            int customers = Books.read(book, open -> open.entries().customers()).size();
            yield customers % IMPORTED == 0 && customers >= told.size() * IMPORTED;
        }
        case "forget" -> told.stream().allMatch(id -> book.read(open -> open.entries().customer(id)).orElseThrow()
                .forgotten().isPresent());
        default -> throw new IllegalArgumentException(kind);
        };
        if (!isWell) {
            throw new IllegalStateException(kind + ": not as it was told: " + told);
        }
    }

    /** Each credit note has its invoice issued anew; both or neither are there. */
    private static boolean isPaired(Book book) {
        long credits = Books.audit(book).heads().stream().filter(head -> head.series().equals(CREDITS)).count() == 0
                ? 0
                : IntStream.iterate(1, i -> i + 1).takeWhile(i -> isThere(book, CREDITS.number(i))).count();
        long replaced = IntStream.iterate(1, i -> i + 1).takeWhile(i -> isThere(book, Books.INVOICES.number(i)))
                .filter(i -> book.read(open -> open.papers().show(Books.INVOICES.number(i))).orElseThrow().origin()
                        .replaces().isPresent())
                .count();
        return credits == replaced;
    }

    private static boolean isThere(Book book, String number) {
        return book.read(open -> open.papers().show(number)).problems().isEmpty();
    }

    private static List<String> killed(Process child, Random random) throws IOException, InterruptedException {
        List<String> told = new ArrayList<>();
        try (BufferedReader out = new BufferedReader(
                new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            for (int i = random.nextInt(MOST_TOLD); i >= 0; i--) {
                told.add(out.readLine());
            }
            TimeUnit.MILLISECONDS.sleep(random.nextInt(MOST_MILLISECONDS));
            child.toHandle().destroyForcibly();
            child.waitFor();
        }
        return told;
    }

    /** A process restores until it is killed; it tells when it begins, and when it is done. */
    static void restore(Path file, BookPlace place) {
        System.out.println("begun");
        Book.restore(file, place, Books.READER, Books.UNHEARD).orElseThrow();
        System.out.println("done");
    }

    /**
     * Each kill has a new place, and comes at any moment of the time that a whole restore takes; the restore that follows it ends as
     * if there had been none.
     */
    private static String restored(int kills, Database database, Path folder, Random random) throws Exception {
        Path file = folder.resolve("monday.backup");
        AuditReport before;
        try (Book book = Books.open(database.place(folder.resolve("from")))) {
            for (int i = 0; i < RESTORED; i++) {
                Books.issue(book, i).orElseThrow();
            }
            before = Books.audit(book);
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
        }
        long length = restored(file, database.place(folder.resolve("whole")), Long.MAX_VALUE);
        int done = 0;
        for (int kill = 1; kill <= kills; kill++) {
            BookPlace place = database.place(folder.resolve("to" + kill));
            restored(file, place, random.nextLong(length));
            Checked<AuditReport> again = Book.restore(file, place, Books.READER, Books.UNHEARD);
            if (!again.problems().isEmpty()) {
                if (again.problems().stream().anyMatch(found -> found.code() != Code.ALREADY_EXISTS)) {
                    throw new IllegalStateException("after kill " + kill + ": " + again.problems());
                }
                done++;
            }
            try (Book book = Books.open(place)) {
                if (!Books.audit(book).equals(before)) {
                    throw new IllegalStateException("after kill " + kill + ": " + Books.audit(book).findings());
                }
            }
            Folder.delete(folder.resolve("to" + kill));
            tell("restore", kill, done);
        }
        return done + " of them after the end of the restore, which takes " + TimeUnit.NANOSECONDS.toMillis(length)
                + " ms; each next restore made the whole book of " + RESTORED + " papers";
    }

    /** Restores in a process of its own, which is killed after so many nanoseconds; returns how long it worked. */
    private static long restored(Path file, BookPlace place, long killedAfter)
            throws IOException, InterruptedException {
        Process child = BookChild.start(place, "restoring", file.toString());
        try (BufferedReader out = new BufferedReader(
                new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            out.readLine();
            long begun = System.nanoTime();
            if (killedAfter == Long.MAX_VALUE) {
                out.readLine();
            } else {
                TimeUnit.NANOSECONDS.sleep(killedAfter);
            }
            long worked = System.nanoTime() - begun;
            child.toHandle().destroyForcibly();
            child.waitFor();
            return worked;
        }
    }
}
