package icequill.ledger.entries;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What somebody began to type into forms of pages, until it is sent, thrown away, or forgotten with its customer. */
public final class FormDrafts {

    private static final String SELECT = "SELECT id, form, site_id, subject, content, began_at, kept_at FROM form_draft ";

    private final Handle handle;
    private final Instant now;

    public FormDrafts(Handle handle, Instant now) {
        this.handle = handle;
        this.now = now;
    }

    static Optional<FormDraft> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "WHERE id = :id").bind("id", id).mapTo(FormDraft.class).findOne();
    }

    /** The last kept first. */
    static List<FormDraft> all(Handle handle, String form) {
        return handle.createQuery(SELECT + "WHERE form = :form ORDER BY kept_at DESC, id").bind("form", form)
                .mapTo(FormDraft.class).list();
    }

    /** Keeps one, in place of what it was before. One of another matter that has its id stays as it is. */
    public void keep(String id, String form, String site, String subject, String content) {
        handle.createUpdate("INSERT INTO form_draft (id, form, site_id, subject, content, began_at, kept_at)"
                + " VALUES (:id, :form, :site, :subject, :content, :now, :now) ON CONFLICT (id) DO UPDATE SET"
                + " content = excluded.content, kept_at = excluded.kept_at WHERE form_draft.form = excluded.form"
                + " AND form_draft.site_id = excluded.site_id AND form_draft.subject = excluded.subject")
                .bind("id", id).bind("form", form).bind("site", site).bind("subject", subject)
                .bind("content", content).bind("now", now).execute();
    }

    public void discard(String id) {
        handle.execute("DELETE FROM form_draft WHERE id = ?", id);
    }

    static void forget(Handle handle, String site) {
        handle.execute("DELETE FROM form_draft WHERE site_id = ?", site);
    }

    static void move(Handle handle, String from, String into) {
        handle.execute("UPDATE form_draft SET site_id = ? WHERE site_id = ?", into, from);
    }
}
