-- What became of the forms of pages that were sent, so that none does its work twice. Backups leave it out: a page of before a
-- restore belongs to a session that is gone.
CREATE TABLE sent_form (
    form_key TEXT PRIMARY KEY,
    content  TEXT NOT NULL,
    answer   TEXT NOT NULL,
    sent_at  TEXT NOT NULL
);
