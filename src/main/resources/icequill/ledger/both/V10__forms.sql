-- What the shop is asked for and agrees on, and visits to come. What pricing needs stands in data, as the form says it.

-- A visit that is planned becomes one that was done; what it was billed by stands with the papers.
ALTER TABLE visit ADD COLUMN state TEXT NOT NULL DEFAULT 'done' CHECK (state IN ('planned', 'done'));

CREATE TABLE agreement (
    id       TEXT PRIMARY KEY,
    number   TEXT NOT NULL UNIQUE,
    site_id  TEXT NOT NULL REFERENCES site (id),
    data     TEXT NOT NULL,
    noted_at TEXT NOT NULL
);
CREATE INDEX agreement_site ON agreement (site_id);

CREATE TABLE request (
    kind     TEXT NOT NULL,
    id       TEXT NOT NULL,
    site_id  TEXT NOT NULL REFERENCES site (id),
    data     TEXT NOT NULL,
    noted_at TEXT NOT NULL,
    PRIMARY KEY (kind, id)
);
CREATE INDEX request_site ON request (site_id);

-- Machines stand in the order in which their site names them.
ALTER TABLE machine ADD COLUMN position INTEGER NOT NULL DEFAULT 0;
