CREATE TRIGGER further_visit_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON paper_further_visit
    FOR EACH STATEMENT EXECUTE FUNCTION paper_never_changes();
