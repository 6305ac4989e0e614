package icequill.ledger.papers;

import icequill.ledger.store.Dialect;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The files of papers within a server's book, of which offices have copies in their folders. A book that is a file keeps none. */
public record KeptPdfs(Handle handle, Dialect dialect) {

    /** Stores the file of a paper, in the transaction that stores the paper, where the book keeps files at all. */
    public void keep(String number, byte[] pdf) {
        if (dialect.keepsPdfs()) {
            handle.createUpdate(
                    "INSERT INTO paper_pdf (paper_id, pdf) SELECT id, :pdf FROM paper WHERE number = :number")
                    .bind("pdf", pdf).bind("number", number).execute();
        }
    }

    /** The file of a paper; empty where the book has none of it. */
    public Optional<Pdf> of(String number) {
        return dialect.keepsPdfs()
                ? handle.createQuery("SELECT f.pdf FROM paper_pdf f JOIN paper p ON p.id = f.paper_id"
                        + " WHERE p.number = :number").bind("number", number).mapTo(byte[].class).findOne().map(Pdf::of)
                : Optional.empty();
    }
}
