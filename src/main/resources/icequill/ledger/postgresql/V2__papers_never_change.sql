CREATE FUNCTION paper_never_changes() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'an issued paper never changes'; END $$;
CREATE TRIGGER paper_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON paper
    FOR EACH STATEMENT EXECUTE FUNCTION paper_never_changes();
CREATE TRIGGER paper_line_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON paper_line
    FOR EACH STATEMENT EXECUTE FUNCTION paper_never_changes();
