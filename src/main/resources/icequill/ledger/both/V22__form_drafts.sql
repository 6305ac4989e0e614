-- What somebody began to type into the form of a page and did not send yet. Backups leave it out: it is no entry yet, and what was thrown
-- away, or forgotten with a customer, must not come back with an older backup.
CREATE TABLE form_draft (
    id       TEXT PRIMARY KEY,
    form     TEXT NOT NULL,
    site_id  TEXT NOT NULL REFERENCES site (id),
    subject  TEXT NOT NULL,
    content  TEXT NOT NULL,
    began_at TEXT NOT NULL,
    kept_at  TEXT NOT NULL
);
CREATE INDEX form_draft_site ON form_draft (site_id);
