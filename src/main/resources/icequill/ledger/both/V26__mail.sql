-- How customers want papers by mail: for what at once as words with spaces between them, standing papers as names in lines.
CREATE TABLE customer_mail (
    customer_id TEXT    PRIMARY KEY REFERENCES customer (id),
    at_once     TEXT    NOT NULL,
    bare        INTEGER NOT NULL CHECK (bare IN (0, 1)),
    data        INTEGER NOT NULL CHECK (data IN (0, 1)),
    enclosed    TEXT    NOT NULL
);
