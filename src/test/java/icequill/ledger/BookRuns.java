package icequill.ledger;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Longer runs than tests should take; DEVELOPERS.md says how to start them, and holds their results. */
public final class BookRuns {

    private BookRuns() {
    }

    public static void main(String[] args) throws Exception {
        switch (args[0]) {
        case "fill" -> fill(args[1], Integer.parseInt(args[2]), Path.of(args[3]));
        default -> throw new IllegalArgumentException(args[0]);
        }
    }

    private static void fill(String database, int papers, Path folder) throws Exception {
        Files.createDirectories(folder);
        if (database.equals("SQLITE")) {
            timed(papers, BookPlace.inShop(folder));
        } else {
            try (EmbeddedPostgres server = server(folder)) {
                timed(papers,
                        new BookPlace.OnServer(
                                server.getJdbcUrl("postgres", "postgres") + "&reWriteBatchedInserts=true",
                                folder.resolve("papers")));
            }
        }
    }

    private static EmbeddedPostgres server(Path folder) throws IOException {
        return EmbeddedPostgres.builder().setDataDirectory(folder.resolve("server")).setCleanDataDirectory(false)
                .start();
    }

    private static void timed(int papers, BookPlace place) throws Exception {
        BookFilling filling = new BookFilling(20_000, 60_000, papers);
        if (Folder.isEmpty(place.papers())) {
            long begun = System.nanoTime();
            filling.fill(place);
            Files.createFile(place.papers().resolve("filled"));
            System.out.println("filled in " + (System.nanoTime() - begun) / 1_000_000 + " ms");
        }
        try (Book book = Books.open(place)) {
            for (int round = 0; round < 3; round++) {
                for (String text : new String[]{"PO-" + filling.order(papers / 2), "SN-3001", "150.00", "hotel street",
                        "hotel grill", "hotel 150.00", "grill maple 150.00", "street 2020-05-01", "store road",
                        "ny 150.00",
                        "hotel " + filling.order(papers / 3), filling.number(papers / 2), "12100 150.00 hotel", "7"}) {
                    long begun = System.nanoTime();
                    int found = Books.read(book, reading -> reading.papers().find(text, 50)).size();
                    System.out.println(round + " " + text + ": " + found + " in "
                            + (System.nanoTime() - begun) / 1000 + " us");
                }
                long begun = System.nanoTime();
                Books.issue(book, round).orElseThrow();
                System.out.println("issue " + (System.nanoTime() - begun) / 1000 + " us");
            }
        }
    }
}
