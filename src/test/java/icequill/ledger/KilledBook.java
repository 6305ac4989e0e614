package icequill.ledger;

import icequill.ledger.store.BookPlace;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A book in which processes are killed at one kind of work.
 *
 * @param told all that they told of
 */
record KilledBook(KilledWork work, Database database, BookPlace place, List<String> told) {

    private static final int ISSUED_BEFORE = 20;

    /** A new book with some papers. */
    static KilledBook begun(KilledWork work, Database database, Path folder) {
        BookPlace place = database.place(folder.resolve(work + "-" + database));
        try (Book book = Books.open(place)) {
            for (int i = 0; i < ISSUED_BEFORE; i++) {
                Books.issue(book, i).orElseThrow();
            }
        }
        return new KilledBook(work, database, place, new ArrayList<>());
    }

    String name() {
        return work + " " + database;
    }

    /** How a process is told to work in it. */
    List<String> order() {
        return List.of(work.name(), BookChild.text(place), place.papers().toString());
    }

    void hear(List<String> told) {
        this.told.addAll(told);
    }

    int unfinished() throws IOException {
        return work.unfinished(place);
    }

    /** Opens the book, as the next who works in it does; the audit is clean, and all that was told of is there. */
    void check() throws IOException {
        try (Book book = Books.open(place)) {
            List<?> findings = Books.audit(book).findings();
            if (!findings.isEmpty() || !work.isWell(book, place, told)) {
                throw new IllegalStateException(name() + ": " + findings + ", told of: " + told);
            }
        }
    }
}
