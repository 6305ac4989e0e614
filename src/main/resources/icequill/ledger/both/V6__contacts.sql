-- How a customer is reached, and what the shop notes of him for itself.
ALTER TABLE customer ADD COLUMN telephone TEXT;
ALTER TABLE customer ADD COLUMN notes TEXT;

-- Whom to turn to, in the order in which they are to be asked; what for as words with spaces between them.
CREATE TABLE customer_contact (
    customer_id TEXT    NOT NULL REFERENCES customer (id),
    position    INTEGER NOT NULL,
    name        TEXT    NOT NULL,
    role        TEXT,
    purposes    TEXT    NOT NULL,
    telephone   TEXT,
    email       TEXT,
    PRIMARY KEY (customer_id, position)
);
