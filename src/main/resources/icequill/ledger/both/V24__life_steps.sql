-- What happens to a quote, an agreement, a call, a job or a claim, step by step. Where each of them stands is worked out from its steps.
-- Rows are added, never changed. What is personal stands apart, so that it can be forgotten with its customer.
CREATE TABLE life_step (
    kind     TEXT    NOT NULL,
    id       TEXT    NOT NULL,
    position INTEGER NOT NULL CHECK (position >= 1),
    event    TEXT    NOT NULL,
    dated    TEXT    NOT NULL,
    site_id  TEXT REFERENCES site (id),
    said     TEXT    NOT NULL,
    personal TEXT    NOT NULL,
    noted_at TEXT    NOT NULL,
    PRIMARY KEY (kind, id, position)
);
CREATE INDEX life_step_site ON life_step (site_id, kind);
