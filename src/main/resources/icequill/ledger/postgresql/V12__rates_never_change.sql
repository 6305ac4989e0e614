CREATE FUNCTION rates_never_change() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'a version of the rates never changes'; END $$;
CREATE TRIGGER rates_version_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON rates_version
    FOR EACH STATEMENT EXECUTE FUNCTION rates_never_change();
CREATE TRIGGER rates_file_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON rates_file
    FOR EACH STATEMENT EXECUTE FUNCTION rates_never_change();
CREATE TRIGGER rates_adopted_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON rates_adopted
    FOR EACH STATEMENT EXECUTE FUNCTION rates_never_change();
