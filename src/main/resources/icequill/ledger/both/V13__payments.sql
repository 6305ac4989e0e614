-- Money that came in, or that went back to a customer. What was noted by mistake is withdrawn; nothing of it is ever another.
CREATE TABLE payment (
    id           TEXT PRIMARY KEY,
    customer_id  TEXT    NOT NULL REFERENCES customer (id),
    paid_on      TEXT    NOT NULL,
    currency     TEXT    NOT NULL,
    amount_minor BIGINT  NOT NULL CHECK (amount_minor > 0),
    way          TEXT    NOT NULL,
    went_back    INTEGER NOT NULL CHECK (went_back IN (0, 1)),
    reference    TEXT,
    noted_at     TEXT    NOT NULL
);
CREATE INDEX payment_customer ON payment (customer_id, paid_on);

-- What of a payment is for which bill, by its number: a paper's, or that of a bill from before there was a book. The rest is on account.
CREATE TABLE payment_share (
    payment_id   TEXT    NOT NULL REFERENCES payment (id),
    position     INTEGER NOT NULL,
    bill         TEXT    NOT NULL,
    counts_from  TEXT    NOT NULL,
    amount_minor BIGINT  NOT NULL CHECK (amount_minor > 0),
    PRIMARY KEY (payment_id, position)
);
CREATE INDEX payment_share_bill ON payment_share (bill);

CREATE TABLE payment_withdrawn (
    payment_id   TEXT PRIMARY KEY REFERENCES payment (id),
    withdrawn_at TEXT NOT NULL,
    reason       TEXT NOT NULL
);

-- What the shop knows of a customer's account and no paper says: bills from before there was a book, what is disputed, terms for paying
-- late, reminders that were sent. It stands in data, as the form says it.
CREATE TABLE account (
    customer_id TEXT PRIMARY KEY REFERENCES customer (id),
    data        TEXT NOT NULL,
    noted_at    TEXT NOT NULL
);
