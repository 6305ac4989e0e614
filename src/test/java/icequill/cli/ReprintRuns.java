package icequill.cli;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Kills processes that print a lost or changed paper again, each at another moment: {@code 200 SQLITE 1}, the last being the seed.
 * After each the file is whole, in its place or not, the next printing makes it byte for byte as it was issued, and nothing else is
 * left.
 */
public final class ReprintRuns {

    private static final int TOLD_EVERY = 5;
    private static final int MOST_TOLD = 3;
    private static final int MOST_MILLISECONDS = 200;
    private static final String NUMBER = "INV-2026-00001";
    private static final byte[] CHANGED = "%PDF-1.7 and nothing more".getBytes(StandardCharsets.UTF_8);

    private ReprintRuns() {
    }

    public static void main(String[] args) throws Exception {
        if (args[0].equals("work")) {
            work(new BookShop(Path.of(args[1])), Integer.parseInt(args[2]));
            return;
        }
        Database database = Database.valueOf(args[1]);
        Path folder = Files.createTempDirectory("icequill-kills");
        try {
            System.out.println("reprint, " + database + ": " + killed(Integer.parseInt(args[0]),
                    BookShop.in(folder.resolve("shop"), database), new Random(Long.parseLong(args[2]))));
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path file : all.toList().reversed()) {
                    Files.delete(file);
                }
            }
        }
    }

    /** What a process does until it is killed; it tells each time that the paper is there again. */
    private static void work(BookShop shop, int times) throws IOException {
        Path file = file(shop);
        for (int i = 0; i < times; i++) {
            if (i % 2 == 0) {
                Files.delete(file);
            } else {
                Files.write(file, CHANGED);
            }
            Run run = shop.run("reprint", NUMBER);
            if (run.status() != 0) {
                throw new IllegalStateException(run.err());
            }
            System.out.println(i);
        }
    }

    private static String killed(int kills, BookShop shop, Random random) throws IOException, InterruptedException {
        shop.issue("late-call", "2026-05-14");
        byte[] issued = Files.readAllBytes(file(shop));
        int told = 0;
        int missing = 0;
        int unfinished = 0;
        for (int kill = 1; kill <= kills; kill++) {
            told += kill(shop, random);
            List<Path> left = beside(shop);
            missing += left.contains(file(shop)) ? 0 : 1;
            unfinished += (int) left.stream().filter(file -> file.toString().endsWith(".unfinished")).count();
            if (left.contains(file(shop)) && !isOne(Files.readAllBytes(file(shop)), issued)) {
                throw new IllegalStateException("after kill " + kill + ": half a file");
            }
            shop.json("reprint", NUMBER);
            if (!Arrays.equals(Files.readAllBytes(file(shop)), issued) || !beside(shop).equals(List.of(file(shop)))) {
                throw new IllegalStateException("after kill " + kill + ": " + beside(shop));
            }
            shop.json("audit");
            if (kill % TOLD_EVERY == 0) {
                System.out.println("reprint " + kill + " kills, all is well");
            }
        }
        return kills + " kills, " + told + " told of, " + missing + " in between, " + unfinished
                + " unfinished files, cleared by the next; each is byte for byte as issued, all audits clean";
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

    /** How often the process told of a paper before it was killed. */
    private static int kill(BookShop shop, Random random) throws IOException, InterruptedException {
        Process child = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xmx256m", "-Djava.awt.headless=true",
                "--enable-native-access=ALL-UNNAMED",
                "-Djava.util.logging.config.file="
                        + Path.of("src/main/dist/lib/logging.properties").toAbsolutePath(),
                "-cp", System.getProperty("java.class.path"), ReprintRuns.class.getName(), "work",
                shop.folder().toString(), "1000000").redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try (BufferedReader out = new BufferedReader(
                new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            int told = random.nextInt(MOST_TOLD) + 1;
            for (int i = 0; i < told; i++) {
                out.readLine();
            }
            TimeUnit.MILLISECONDS.sleep(random.nextInt(MOST_MILLISECONDS));
            child.toHandle().destroyForcibly();
            child.waitFor();
            return told;
        }
    }
}
