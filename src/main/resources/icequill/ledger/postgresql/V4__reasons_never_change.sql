CREATE FUNCTION withdrawal_never_changes() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'a withdrawal never changes'; END $$;
CREATE TRIGGER visit_withdrawn_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON visit_withdrawn
    FOR EACH STATEMENT EXECUTE FUNCTION withdrawal_never_changes();
CREATE FUNCTION backdating_never_changes() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'the reason of an issued paper never changes'; END $$;
CREATE TRIGGER paper_backdated_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON paper_backdated
    FOR EACH STATEMENT EXECUTE FUNCTION backdating_never_changes();
