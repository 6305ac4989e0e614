package icequill.ledger;

import icequill.files.disk.Folder;
import icequill.ledger.care.AuditReport;
import icequill.ledger.store.BookPlace;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Kills processes that each work in several books at a time, on both databases, and looks at each book after each kill:
 * {@code work 200 1}, or {@code work 200 1 FORGET} for one kind of work, or {@code restore 100 1}, where each process restores two books on
 * each database. The number after the kills is the seed; another one kills at other moments.
 */
public final class KillRuns {

    /** Books that grew for long would take most of the time to look through. */
    private static final int KILLS_OF_A_BOOK = 20;
    private static final int TOLD_EVERY = 5;
    private static final int MOST_WORK_MILLISECONDS = 400;
    private static final int RESTORED = 20;
    private static final int AT_A_TIME = 2;
    private static final int PLACES = AT_A_TIME * Database.values().length;
    private static final String BEGUN = "begun";
    private static final String DONE = "done";

    private KillRuns() {
    }

    public static void main(String[] args) throws Exception {
        int kills = Integer.parseInt(args[1]);
        Random random = new Random(Long.parseLong(args[2]));
        Path folder = Files.createTempDirectory("icequill-kills");
        try {
            if (args[0].equals("restore")) {
                restored(kills, folder, random);
            } else {
                List<KilledWork> kinds = Stream.of(args).skip(3).map(KilledWork::valueOf).toList();
                worked(kinds.isEmpty() ? List.of(KilledWork.values()) : kinds, kills, folder, random);
            }
        } finally {
            Folder.delete(folder);
        }
    }

    /** What a process does until it is killed: works in each book, and tells each time that it was done. */
    static void work(List<String> orders) {
        long self = ProcessHandle.current().pid();
        for (int i = 0; i < orders.size(); i += 3) {
            KilledWork work = KilledWork.valueOf(orders.get(i));
            BookPlace place = BookChild.place(orders.get(i + 1), orders.get(i + 2));
            int number = i / 3;
            Thread.ofPlatform().start(() -> {
                try (Book book = Books.open(place)) {
                    for (int seed = 0; seed < Integer.MAX_VALUE; seed++) {
                        System.out.println(number + " " + work.once(book, place, self + "-" + seed, seed));
                    }
                }
            });
        }
    }

    private static void worked(List<KilledWork> kinds, int kills, Path folder, Random random) throws Exception {
        Map<String, Integer> told = new TreeMap<>();
        Map<String, Integer> unfinished = new TreeMap<>();
        for (int done = 0; done < kills; done += KILLS_OF_A_BOOK) {
            Path shops = folder.resolve("shops" + done);
            List<KilledBook> books = kinds.stream().flatMap(work -> Arrays.stream(Database.values())
                    .map(database -> KilledBook.begun(work, database, shops))).toList();
            for (int kill = done + 1; kill <= Math.min(kills, done + KILLS_OF_A_BOOK); kill++) {
                Map<Integer, List<String>> heard = heard(killed(books, random));
                for (int i = 0; i < books.size(); i++) {
                    KilledBook book = books.get(i);
                    book.hear(heard.getOrDefault(i, List.of()));
                    unfinished.merge(book.name(), book.unfinished(), Integer::sum);
                    told.merge(book.name(), heard.getOrDefault(i, List.of()).size(), Integer::sum);
                    book.check();
                }
                if (kill % TOLD_EVERY == 0 || kill == kills) {
                    System.out.println(kill + " kills, told of " + told + ", unfinished files " + unfinished
                            + "; all audits clean, nothing lost, nothing half done");
                }
            }
            Folder.delete(shops);
        }
    }

    private static List<String> killed(List<KilledBook> books, Random random) throws Exception {
        Process child = BookChild.start(books.getFirst().place(), Stream.concat(Stream.of("work"),
                books.stream().map(KilledBook::order).flatMap(List::stream)).toArray(String[]::new));
        return Killing.after(child, told -> heard(told).size() == books.size(),
                Duration.ofMillis(random.nextInt(MOST_WORK_MILLISECONDS)));
    }

    /** What was told of each book, by its number. */
    private static Map<Integer, List<String>> heard(List<String> lines) {
        Map<Integer, List<String>> heard = new HashMap<>();
        for (String line : lines) {
            int gap = line.indexOf(' ');
            heard.computeIfAbsent(Integer.parseInt(line.substring(0, gap)), none -> new ArrayList<>())
                    .add(line.substring(gap + 1));
        }
        return heard;
    }

    /** A process restores into several places until it is killed; it tells when each is begun, and when it is done. */
    static void restore(Path file, List<String> places) {
        for (int i = 0; i < places.size(); i += 2) {
            BookPlace place = BookChild.place(places.get(i), places.get(i + 1));
            int number = i / 2;
            Thread.ofPlatform().start(() -> {
                System.out.println(number + " " + BEGUN);
                Book.restore(file, place, Books.READER, Books.UNHEARD).orElseThrow();
                System.out.println(number + " " + DONE);
            });
        }
    }

    /**
     * Each kill has new places, and comes at any moment of the work that whole restores take; the restore that follows it ends as if there
     * had been none.
     */
    private static void restored(int kills, Path folder, Random random) throws Exception {
        Path file = folder.resolve("monday.backup");
        AuditReport before;
        try (Book book = Books.open(Database.SQLITE.place(folder.resolve("from")))) {
            IntStream.range(0, RESTORED).forEach(i -> Books.issue(book, i).orElseThrow());
            before = Books.audit(book);
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
        }
        Duration whole = Killing.between(restoring(file, places(folder.resolve("whole"))),
                told -> count(told, BEGUN) == PLACES, told -> count(told, DONE) == PLACES);
        Map<Database, Integer> after = new TreeMap<>();
        Map<Database, Integer> hit = new TreeMap<>();
        for (int kill = 1; kill <= kills; kill++) {
            Path shops = folder.resolve("to" + kill);
            List<BookPlace> places = places(shops);
            List<String> told = Killing.after(restoring(file, places), all -> count(all, BEGUN) == PLACES,
                    Duration.ofMillis(random.nextLong(whole.toMillis())));
            for (int i = 0; i < places.size(); i++) {
                Database database = places.get(i) instanceof BookPlace.InFile ? Database.SQLITE : Database.POSTGRESQL;
                hit.merge(database, 1, Integer::sum);
                after.merge(database, again(file, places.get(i), told.contains(i + " " + DONE), before), Integer::sum);
            }
            Folder.delete(shops);
            if (kill % TOLD_EVERY == 0 || kill == kills) {
                System.out.println(kill + " processes killed, restoring " + hit + ", of them after the end " + after
                        + ", all of which take " + whole.toMillis() + " ms of a processor; each next restore made the"
                        + " whole book of " + RESTORED + " papers");
            }
        }
    }

    private static List<BookPlace> places(Path folder) {
        return IntStream.range(0, AT_A_TIME).boxed().flatMap(i -> Arrays.stream(Database.values())
                .map(database -> database.place(folder.resolve(database + "-" + i)))).toList();
    }

    private static Process restoring(Path file, List<BookPlace> places) throws Exception {
        return BookChild.start(places.getFirst(), Stream.concat(Stream.of("restoring", file.toString()),
                places.stream().flatMap(place -> Stream.of(BookChild.text(place), place.papers().toString())))
                .toArray(String[]::new));
    }

    private static long count(List<String> told, String word) {
        return told.stream().filter(line -> line.endsWith(" " + word)).count();
    }

    /** Restores again; returns 1 where the killed process had come to the end, and 0 otherwise. */
    private static int again(Path file, BookPlace place, boolean isDone, AuditReport before) {
        Validated<AuditReport> again = Book.restore(file, place, Books.READER, Books.UNHEARD);
        List<Code> codes = again.problems().stream().map(Problem::code).distinct().toList();
        boolean wasThere = codes.equals(List.of(Code.ALREADY_EXISTS));
        try (Book book = Books.open(place)) {
            AuditReport report = Books.audit(book);
            if (!report.equals(before) || (!wasThere && (isDone || !codes.isEmpty()))) {
                throw new IllegalStateException(place + ": " + again.problems() + report.findings());
            }
        }
        return wasThere ? 1 : 0;
    }
}
