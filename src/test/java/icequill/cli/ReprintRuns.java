package icequill.cli;

import icequill.OwnProcess;
import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import icequill.ledger.Killing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Kills processes that print a lost or changed paper again, in two shops at a time, one on each database: {@code 200 1}, the last being
 * the seed. After each kill the file is whole, in its place or not, the next printing makes it byte for byte as it was issued, and
 * nothing else is left.
 */
public final class ReprintRuns {

    private static final int TOLD_EVERY = 5;
    private static final int MOST_WORK_MILLISECONDS = 400;
    private static final String NUMBER = "INV-2026-00001";
    private static final byte[] CHANGED = "%PDF-1.7 and nothing more".getBytes(StandardCharsets.UTF_8);

    private ReprintRuns() {
    }

    public static void main(String[] args) throws Exception {
        if (args[0].equals("work")) {
            Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> {
                fault.printStackTrace();
                System.exit(1);
            });
            Stream.of(args).skip(1).map(folder -> new BookShop(Path.of(folder)))
                    .forEach(shop -> Thread.ofPlatform().start(() -> work(shop)));
            return;
        }
        Path folder = Files.createTempDirectory("icequill-kills");
        try {
            List<Reprinted> shops = new ArrayList<>();
            for (Database database : Database.values()) {
                shops.add(Reprinted.in(folder.resolve(database.name()), database));
            }
            killed(Integer.parseInt(args[0]), shops, new Random(Long.parseLong(args[1])));
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path file : all.toList().reversed()) {
                    Files.delete(file);
                }
            }
        }
    }

    /** What a process does until it is killed; it tells each time that the paper is there again. */
    private static void work(BookShop shop) {
        Path file = file(shop);
        try {
            for (int i = 0; i < Integer.MAX_VALUE; i++) {
                if (i % 2 == 0) {
                    Files.delete(file);
                } else {
                    Files.write(file, CHANGED);
                }
                Run run = shop.run("paper", "reprint", NUMBER);
                if (run.status() != 0) {
                    throw new IllegalStateException(run.err());
                }
                System.out.println(shop.folder());
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void killed(int kills, List<Reprinted> shops, Random random)
            throws IOException, InterruptedException {
        for (int kill = 1; kill <= kills; kill++) {
            List<String> told = Killing.after(start(shops), lines -> Set.copyOf(lines).size() == shops.size(),
                    Duration.ofMillis(random.nextInt(MOST_WORK_MILLISECONDS)));
            for (Reprinted shop : shops) {
                shop.check(told);
            }
            if (kill % TOLD_EVERY == 0 || kill == kills) {
                System.out.println(kill + " kills: " + shops.stream().map(Reprinted::text).toList()
                        + "; each next reprint is byte for byte as issued, all audits clean");
            }
        }
    }

    /** A shop with one paper. */
    private static final class Reprinted {

        private final Database database;
        private final BookShop shop;
        private final byte[] issued;
        private long told;
        private int missing;
        private int unfinished;

        private Reprinted(Database database, BookShop shop, byte[] issued) {
            this.database = database;
            this.shop = shop;
            this.issued = issued;
        }

        static Reprinted in(Path folder, Database database) throws IOException {
            BookShop shop = BookShop.in(folder, database);
            shop.issue("late-call", "2026-05-14");
            return new Reprinted(database, shop, Files.readAllBytes(file(shop)));
        }

        void check(List<String> lines) throws IOException {
            told += lines.stream().filter(line -> line.equals(shop.folder().toString())).count();
            List<Path> left = beside(shop);
            missing += left.contains(file(shop)) ? 0 : 1;
            unfinished += (int) left.stream().filter(file -> file.toString().endsWith(".unfinished")).count();
            if (left.contains(file(shop)) && !isOne(Files.readAllBytes(file(shop)), issued)) {
                throw new IllegalStateException(database + ": half a file");
            }
            shop.json("paper", "reprint", NUMBER);
            if (!Arrays.equals(Files.readAllBytes(file(shop)), issued) || !beside(shop).equals(List.of(file(shop)))) {
                throw new IllegalStateException(database + ": " + beside(shop));
            }
            shop.json("audit");
        }

        String text() {
            return database + " told of " + told + ", " + missing + " files away, " + unfinished + " unfinished";
        }
    }

    /** What was put there as a change, or what was issued. */
    private static boolean isOne(byte[] there, byte[] issued) {
        return Arrays.equals(there, issued) || Arrays.equals(there, CHANGED) || there.length == 0;
    }

    private static Path file(BookShop shop) {
        return shop.folder().resolve("papers/issued/INV-2026").resolve(NUMBER + ".pdf");
    }

    private static List<Path> beside(BookShop shop) throws IOException {
        try (Stream<Path> files = Files.list(shop.folder().resolve("papers/issued/INV-2026"))) {
            return files.sorted().toList();
        }
    }

    private static Process start(List<Reprinted> shops) throws IOException {
        List<String> arguments = new ArrayList<>(List.of("work"));
        shops.forEach(shop -> arguments.add(shop.shop.folder().toString()));
        return new ProcessBuilder(OwnProcess.java(List.of(), ReprintRuns.class, arguments))
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }
}
