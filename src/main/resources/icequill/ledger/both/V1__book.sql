-- The shop's book. Days are texts such as 2026-05-14, moments are texts in UTC, money is whole minor units beside its currency.
-- What Icequill's databases write differently stands in braces, or in the folder of that database.

CREATE TABLE customer (
    id               TEXT PRIMARY KEY,
    name             TEXT NOT NULL,
    parent_id        TEXT REFERENCES customer (id) DEFERRABLE INITIALLY DEFERRED,
    language         TEXT,
    vendor_number    TEXT,
    payment_days     INTEGER CHECK (payment_days >= 0),
    claims_exemption INTEGER NOT NULL CHECK (claims_exemption IN (0, 1)),
    accepted_on      TEXT,
    accepted_paper   TEXT,
    forgotten_on     TEXT
);
CREATE INDEX customer_parent ON customer (parent_id);

-- Who pays, from a day to just before another; an empty first day stands for always.
CREATE TABLE customer_bill_to (
    customer_id TEXT NOT NULL REFERENCES customer (id),
    valid_from  TEXT NOT NULL,
    valid_to    TEXT CHECK (valid_to > valid_from),
    name        TEXT NOT NULL,
    attention   TEXT,
    street      TEXT NOT NULL,
    city        TEXT NOT NULL,
    region      TEXT NOT NULL,
    postal_code TEXT NOT NULL,
    country     TEXT NOT NULL,
    email       TEXT,
    vat_id      TEXT,
    PRIMARY KEY (customer_id, valid_from)
);

CREATE TABLE customer_certificate (
    customer_id TEXT    NOT NULL REFERENCES customer (id),
    position    INTEGER NOT NULL,
    kind        TEXT    NOT NULL,
    number      TEXT    NOT NULL,
    state       TEXT    NOT NULL,
    reason      TEXT    NOT NULL,
    signed_on   TEXT    NOT NULL,
    expires_on  TEXT,
    PRIMARY KEY (customer_id, position)
);

-- What pricing needs besides stands in data, as the program's site files say it.
CREATE TABLE site (
    id           TEXT PRIMARY KEY,
    customer_id  TEXT NOT NULL REFERENCES customer (id),
    name         TEXT NOT NULL,
    store_number TEXT,
    street       TEXT NOT NULL,
    city         TEXT NOT NULL,
    region       TEXT NOT NULL,
    postal_code  TEXT NOT NULL,
    country      TEXT NOT NULL,
    tax_place    TEXT,
    data         TEXT NOT NULL
);
CREATE INDEX site_customer ON site (customer_id);

CREATE TABLE machine (
    site_id      TEXT NOT NULL REFERENCES site (id),
    id           TEXT NOT NULL,
    model        TEXT NOT NULL,
    serial       TEXT,
    installed_on TEXT,
    data         TEXT NOT NULL,
    PRIMARY KEY (site_id, id)
);
CREATE INDEX machine_serial ON machine (serial);

CREATE TABLE visit (
    id             TEXT PRIMARY KEY,
    site_id        TEXT NOT NULL REFERENCES site (id),
    began          TEXT NOT NULL,
    ended          TEXT NOT NULL,
    purchase_order TEXT,
    data           TEXT NOT NULL,
    recorded_at    TEXT NOT NULL
);
CREATE INDEX visit_site ON visit (site_id, began);

-- One row for each run of numbers; its row is locked while a number is taken.
CREATE TABLE series (
    kind   TEXT    NOT NULL,
    office TEXT    NOT NULL,
    year   INTEGER NOT NULL,
    next   INTEGER NOT NULL CHECK (next >= 1),
    head   TEXT    NOT NULL,
    PRIMARY KEY (kind, office, year)
);

-- Where papers went, in words: one row for all papers of the same customer, store and address. Found by the words of it.
CREATE TABLE whereabouts (
    id         ${id},
    text       TEXT   NOT NULL UNIQUE,
    last_paper BIGINT NOT NULL
);
CREATE INDEX whereabouts_last ON whereabouts (last_paper);

CREATE TABLE whereabouts_word (
    word           TEXT ${binary} NOT NULL,
    whereabouts_id BIGINT NOT NULL REFERENCES whereabouts (id),
    PRIMARY KEY (word, whereabouts_id)
) ${clustered};

-- An issued paper. Rows are added, never changed; what happens to a paper later (payments, disputes, acceptance) has rows of its own
-- that point here, or to a line.
CREATE TABLE paper (
    id             ${id},
    number         TEXT    NOT NULL UNIQUE,
    kind           TEXT    NOT NULL,
    office         TEXT    NOT NULL,
    year           INTEGER NOT NULL,
    position       INTEGER NOT NULL CHECK (position >= 1),
    dated          TEXT    NOT NULL,
    due            TEXT,
    issued_at      TEXT    NOT NULL,
    customer_id    TEXT REFERENCES customer (id),
    site_id        TEXT REFERENCES site (id),
    visit_id       TEXT REFERENCES visit (id),
    agreement      TEXT,
    corrects       TEXT REFERENCES paper (number),
    replaces       TEXT REFERENCES paper (number),
    currency       TEXT,
    lines_minor    BIGINT,
    net_minor      BIGINT,
    tax_minor      BIGINT,
    gross_minor    BIGINT,
    rates_version  TEXT    NOT NULL,
    data           TEXT    NOT NULL,
    pdf_hash       TEXT    NOT NULL,
    previous_seal  TEXT    NOT NULL,
    seal           TEXT    NOT NULL,
    whereabouts_id BIGINT  NOT NULL REFERENCES whereabouts (id),
    UNIQUE (kind, office, year, position)
);
CREATE INDEX paper_dated ON paper (dated);
CREATE INDEX paper_customer ON paper (customer_id, dated);
CREATE INDEX paper_visit ON paper (visit_id);
CREATE INDEX paper_agreement ON paper (agreement);
CREATE INDEX paper_corrects ON paper (corrects);
CREATE INDEX paper_whereabouts ON paper (whereabouts_id, id);

-- base is the net less the line's share of a discount on the whole paper.
CREATE TABLE paper_line (
    paper_id     BIGINT  NOT NULL REFERENCES paper (id),
    position     INTEGER NOT NULL,
    charge_class TEXT    NOT NULL,
    outcome      TEXT    NOT NULL,
    text         TEXT    NOT NULL,
    net_minor    BIGINT  NOT NULL,
    base_minor   BIGINT  NOT NULL,
    PRIMARY KEY (paper_id, position)
);

-- Words that belong to one paper: its number, purchase order, serials, amounts, days. Of a word that many have, the newest come first.
CREATE TABLE paper_word (
    word           TEXT ${binary} NOT NULL,
    paper_id       BIGINT NOT NULL,
    whereabouts_id BIGINT NOT NULL,
    PRIMARY KEY (word, paper_id) ${covering}
) ${clustered};
