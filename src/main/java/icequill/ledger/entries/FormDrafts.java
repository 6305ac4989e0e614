package icequill.ledger.entries;

import icequill.ledger.entries.FormDraft.Ending;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What somebody began to type into forms of pages, until it is sent, thrown away, or forgotten with its customer; and that it was. */
public final class FormDrafts {

    private static final String SELECT = "SELECT id, form, site_id, subject, content, began_at, kept_at, ended, answer"
            + " FROM form_draft ";
    private static final String EMPTY = "{}";

    private final Handle handle;
    private final Instant now;

    public FormDrafts(Handle handle, Instant now) {
        this.handle = handle;
        this.now = now;
    }

    static Optional<FormDraft> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "WHERE id = :id").bind("id", id).mapTo(FormDraft.class).findOne();
    }

    /** Those that can be gone on with, the last kept first. */
    static List<FormDraft> all(Handle handle, String form) {
        return handle.createQuery(SELECT + "WHERE form = :form AND ended IS NULL ORDER BY kept_at DESC, id")
                .bind("form", form).mapTo(FormDraft.class).list();
    }

    /** Keeps one, in place of what it was before. One of another matter that has its id stays as it is, and so does one that ended. */
    public void keep(String id, String form, Optional<String> site, String subject, String content) {
        handle.createUpdate("INSERT INTO form_draft (id, form, site_id, subject, content, began_at, kept_at)"
                + " VALUES (:id, :form, :site, :subject, :content, :now, :now) ON CONFLICT (id) DO UPDATE SET"
                + " content = excluded.content, kept_at = excluded.kept_at WHERE form_draft.form = excluded.form"
                + " AND COALESCE(form_draft.site_id, '') = COALESCE(excluded.site_id, '')"
                + " AND form_draft.subject = excluded.subject AND form_draft.ended IS NULL")
                .bind("id", id).bind("form", form).bind("site", site).bind("subject", subject)
                .bind("content", content).bind("now", now).execute();
    }

    /** Remembers that one was sent, whether it was kept before or not. */
    public void sent(String id, String form, String answer) {
        handle.createUpdate("INSERT INTO form_draft (id, form, subject, content, began_at, kept_at, ended, answer)"
                + " VALUES (:id, :form, '', :empty, :now, :now, :ended, :answer) ON CONFLICT (id) DO UPDATE SET"
                + " content = excluded.content, ended = excluded.ended, answer = excluded.answer"
                + " WHERE form_draft.form = excluded.form")
                .bind("id", id).bind("form", form).bind("empty", EMPTY).bind("now", now)
                .bind("ended", Ending.SENT.name()).bind("answer", answer).execute();
    }

    /** Lets go what one says, where it did not end before. */
    public void discard(String id) {
        handle.createUpdate("UPDATE form_draft SET content = :empty, ended = :ended WHERE id = :id AND ended IS NULL")
                .bind("empty", EMPTY).bind("ended", Ending.DISCARDED.name()).bind("id", id).execute();
    }

    static void forget(Handle handle, String site) {
        handle.createUpdate(
                "UPDATE form_draft SET content = :empty, ended = COALESCE(ended, :ended) WHERE site_id = :site")
                .bind("empty", EMPTY).bind("ended", Ending.FORGOTTEN.name()).bind("site", site).execute();
    }

    static void move(Handle handle, String from, String into) {
        handle.execute("UPDATE form_draft SET site_id = ? WHERE site_id = ?", into, from);
    }
}
