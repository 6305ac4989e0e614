-- What began as a draft is known after it ended, too, so that a window that was left open neither sends it once more nor writes it anew.
-- Nothing of what was typed stays with it then. One of somebody whom the book does not have yet has no site.
ALTER TABLE form_draft RENAME TO form_draft_before;
CREATE TABLE form_draft (
    id       TEXT PRIMARY KEY,
    form     TEXT NOT NULL,
    site_id  TEXT REFERENCES site (id),
    subject  TEXT NOT NULL,
    content  TEXT NOT NULL,
    began_at TEXT NOT NULL,
    kept_at  TEXT NOT NULL,
    ended    TEXT,
    answer   TEXT
);
INSERT INTO form_draft (id, form, site_id, subject, content, began_at, kept_at)
    SELECT id, form, site_id, subject, content, began_at, kept_at FROM form_draft_before;
DROP TABLE form_draft_before;
CREATE INDEX form_draft_site ON form_draft (site_id);
