-- What papers are made by: rates, templates and shared settings, as files. Each state of them is known by a hash over names and bytes.
CREATE TABLE rates_version (
    id   TEXT PRIMARY KEY,
    hash TEXT NOT NULL
);

CREATE TABLE rates_file (
    version_id TEXT NOT NULL REFERENCES rates_version (id),
    name       TEXT NOT NULL,
    encoding   TEXT NOT NULL CHECK (encoding IN ('text', 'base64')),
    content    TEXT NOT NULL,
    PRIMARY KEY (version_id, name)
);

-- When each came into force, and by whom; the last is in force.
CREATE TABLE rates_adopted (
    number     BIGINT PRIMARY KEY CHECK (number >= 1),
    version_id TEXT NOT NULL REFERENCES rates_version (id),
    adopted_at TEXT NOT NULL,
    who        TEXT NOT NULL,
    office     TEXT NOT NULL
);
