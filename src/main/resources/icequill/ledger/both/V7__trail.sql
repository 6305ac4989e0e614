-- Who changed what in the book, and when. Rows are added, never changed; each bears the seal of the one before. What an entry was before and
-- after stands apart, so that what is personal can be forgotten: the row keeps a hash of it, and whose it was.
CREATE TABLE trail (
    number        ${id},
    noted_at      TEXT NOT NULL,
    who           TEXT NOT NULL,
    office        TEXT NOT NULL,
    kind          TEXT NOT NULL,
    entry         TEXT NOT NULL,
    event         TEXT NOT NULL,
    before_of     TEXT,
    before_hash   TEXT,
    after_of      TEXT,
    after_hash    TEXT,
    previous_seal TEXT NOT NULL,
    seal          TEXT NOT NULL
);
CREATE INDEX trail_entry ON trail (entry, kind, number);

-- The salt keeps what was forgotten from being guessed by its hash.
CREATE TABLE trail_value (
    trail_number BIGINT NOT NULL REFERENCES trail (number),
    side         TEXT   NOT NULL CHECK (side IN ('before', 'after')),
    salt         TEXT   NOT NULL,
    data         TEXT   NOT NULL,
    PRIMARY KEY (trail_number, side)
) ${clustered};

-- A book that stood before there was a trail goes into it when it is next opened, and this row says so.
INSERT INTO trail (number, noted_at, who, office, kind, entry, event, previous_seal, seal)
SELECT 0, '', '', '', 'BOOK', 'book', 'STOOD', '0000000000000000000000000000000000000000000000000000000000000000', '0000000000000000000000000000000000000000000000000000000000000000'
WHERE EXISTS (SELECT 1 FROM customer) OR EXISTS (SELECT 1 FROM series);
