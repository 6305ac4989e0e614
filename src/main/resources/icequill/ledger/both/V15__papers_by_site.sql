-- Papers of a store, the newest last.
CREATE INDEX paper_site ON paper (site_id, id);
