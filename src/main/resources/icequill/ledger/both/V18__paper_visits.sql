-- The further visits of an invoice that bills several; the first stands in paper.
CREATE TABLE paper_further_visit (
    number   TEXT    NOT NULL REFERENCES paper (number),
    position INTEGER NOT NULL CHECK (position >= 2),
    visit_id TEXT    NOT NULL REFERENCES visit (id),
    site_id  TEXT    NOT NULL REFERENCES site (id),
    PRIMARY KEY (number, position)
);
CREATE INDEX further_visit_visit ON paper_further_visit (visit_id);
