package icequill.ledger.store;

import icequill.files.disk.Folder;
import icequill.problem.Discretion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where a book is kept. The PDFs of its issued papers lie in a folder that holds nothing else. */
public sealed interface BookPlace {

    /** The folder of the issued papers' PDFs. */
    Path papers();

    /** As a message names it; without passwords. */
    String text();

    /** Whether there is a book, or what one left; a server is taken to have one. */
    boolean isBegun();

    /** A file on a disk of this machine, which all its users share. */
    record InFile(Path database, Path papers) implements BookPlace {
        @Override
        public String text() {
            return database.toString();
        }

        @Override
        public boolean isBegun() {
            try {
                return Files.exists(database) || !Folder.isEmpty(papers);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }

    /**
     * A PostgreSQL server that several offices share. The folder of papers is then shared too, and may be on the network.
     *
     * @param url begins with {@code jdbc:postgresql:}; may hold user and password
     */
    record OnServer(String url, Path papers) implements BookPlace {
        @Override
        public String text() {
            return Discretion.ofAddress(url);
        }

        @Override
        public String toString() {
            return text();
        }

        @Override
        public boolean isBegun() {
            return true;
        }
    }

    /** The book that a shop has by default, in its folder. */
    static BookPlace inShop(Path shop) {
        return new InFile(shop.resolve("book").resolve("book.sqlite"), papersIn(shop));
    }

    /** The folder of issued papers in a shop's folder. */
    static Path papersIn(Path shop) {
        return shop.resolve("papers").resolve("issued");
    }
}
