package icequill.ledger.entries;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps what goes along with mails and is no paper of the book. */
public final class MailFiles {

    private final Handle handle;

    public MailFiles(Handle handle) {
        this.handle = handle;
    }

    static List<MailFile> of(Handle handle, String mail) {
        return handle.createQuery(
                "SELECT name, media_type, hash, content FROM mail_file WHERE mail_id = :mail ORDER BY position")
                .bind("mail", mail).mapTo(MailFile.class).list();
    }

    /** Ids of mails whose files are not those that were kept. */
    public static List<String> changed(Handle handle) {
        return handle.createQuery("SELECT mail_id, name, media_type, hash, content FROM mail_file"
                + " ORDER BY mail_id, position").setFetchSize(1)
                .map((row, context) -> new MailFile(row.getString("name"), row.getString("media_type"),
                        row.getString("hash"), row.getString("content")).isWhole()
                                ? Optional.<String>empty()
                                : Optional.of(row.getString("mail_id")))
                .stream().flatMap(Optional::stream).distinct().toList();
    }

    /** Keeps a file behind those that go along with a mail already. */
    public void keep(String mail, MailFile file) {
        handle.createUpdate("INSERT INTO mail_file (mail_id, position, name, media_type, hash, content)"
                + " SELECT :mail, count(*) + 1, :name, :type, :hash, :content FROM mail_file WHERE mail_id = :mail")
                .bind("mail", mail).bind("name", file.name()).bind("type", file.mediaType())
                .bind("hash", file.hash()).bind("content", file.content()).execute();
    }

    /** The database lets this happen only where the customer is forgotten. */
    static void forget(Handle handle, String customer) {
        handle.execute("DELETE FROM mail_file WHERE mail_id IN (SELECT id FROM life_step WHERE kind = 'MAIL'"
                + " AND customer_id = ?)", customer);
    }
}
