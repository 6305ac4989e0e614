package icequill.ledger;

import icequill.ledger.find.PaperFilter;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.store.BookPlace;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A filled book for benchmarks. It is filled once, and kept in the folder for temporary files. */
public final class BookBench implements AutoCloseable {

    /** Before anything is open. */
    public static final BookBench NONE = new BookBench(null, null, new BookFilling(1, 1, 1));

    private final @Nullable EmbeddedPostgres server;
    private final @Nullable Book book;
    private final BookFilling filling;
    private int issued;

    private BookBench(@Nullable EmbeddedPostgres server, @Nullable Book book, BookFilling filling) {
        this.server = server;
        this.book = book;
        this.filling = filling;
    }

    /** Opens it, and fills it the first time; the database as {@link Database} names it. */
    public static BookBench open(String database, int papers) throws Exception {
        Path folder = Path.of(System.getProperty("java.io.tmpdir"), "icequill-bench", database + "-" + papers);
        Files.createDirectories(folder);
        BookFilling filling = new BookFilling(20_000, 60_000, papers);
        EmbeddedPostgres server = switch (Database.valueOf(database)) {
        case SQLITE -> null;
        case POSTGRESQL -> EmbeddedPostgres.builder().setDataDirectory(folder.resolve("server"))
                .setCleanDataDirectory(false).start();
        };
        BookPlace place = server == null
                ? BookPlace.inShop(folder)
                : new BookPlace.OnServer(
                        server.getJdbcUrl("postgres", "postgres") + "&reWriteBatchedInserts=true",
                        BookPlace.papersIn(folder));
        Path done = folder.resolve("filled");
        if (!Files.exists(done)) {
            filling.fill(place);
            Files.createFile(done);
        }
        return new BookBench(server, Books.open(place), filling);
    }

    /** A purchase order that one paper has. */
    public String order() {
        return "PO-" + filling.order(filling.papers() / 2);
    }

    public List<IssuedPaper> find(String text) {
        return Books.read(opened(), reading -> reading.papers().find(text, PaperFilter.NONE, 50));
    }

    public IssuedPaper show() {
        return opened().read(reading -> reading.papers().show(filling.number(filling.papers() / 3))).orElseThrow();
    }

    public IssuedPaper issue() {
        issued++;
        return Books.issue(opened(), issued).orElseThrow();
    }

    @Override
    public void close() throws IOException {
        if (book != null) {
            book.close();
        }
        if (server != null) {
            server.close();
        }
    }

    private Book opened() {
        if (book == null) {
            throw new IllegalStateException("no book is open");
        }
        return book;
    }
}
