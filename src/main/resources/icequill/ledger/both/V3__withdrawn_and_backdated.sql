-- A recorded visit that is not to be billed. Its row stays, and so does the reason.
CREATE TABLE visit_withdrawn (
    visit_id     TEXT PRIMARY KEY REFERENCES visit (id),
    withdrawn_at TEXT NOT NULL,
    reason       TEXT NOT NULL
);

-- Why a paper bears an earlier day than the one before it in its series.
CREATE TABLE paper_backdated (
    paper_id BIGINT PRIMARY KEY REFERENCES paper (id),
    reason   TEXT   NOT NULL
);
