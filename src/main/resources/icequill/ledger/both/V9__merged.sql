-- Who turned out to be one with another. What was entered for the first belongs to the second from that day on; the first's row stays
-- for the papers that were issued for it.
CREATE TABLE customer_merged (
    customer_id TEXT PRIMARY KEY REFERENCES customer (id),
    into_id     TEXT NOT NULL REFERENCES customer (id),
    merged_on   TEXT NOT NULL,
    CHECK (customer_id <> into_id)
);
CREATE INDEX customer_merged_into ON customer_merged (into_id);

CREATE TABLE site_merged (
    site_id   TEXT PRIMARY KEY REFERENCES site (id),
    into_id   TEXT NOT NULL REFERENCES site (id),
    merged_on TEXT NOT NULL,
    CHECK (site_id <> into_id)
);
CREATE INDEX site_merged_into ON site_merged (into_id);
