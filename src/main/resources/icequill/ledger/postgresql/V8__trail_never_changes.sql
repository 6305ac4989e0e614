CREATE FUNCTION trail_never_changes() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'the trail never changes'; END $$;
CREATE TRIGGER trail_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON trail
    FOR EACH STATEMENT EXECUTE FUNCTION trail_never_changes();
CREATE TRIGGER trail_value_never_changes BEFORE UPDATE OR TRUNCATE ON trail_value
    FOR EACH STATEMENT EXECUTE FUNCTION trail_never_changes();
-- What an entry is by now stays as long as the entry does.
CREATE FUNCTION trail_value_is_only_forgotten() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN
    IF NOT EXISTS (
        SELECT 1 FROM trail t
            JOIN customer c ON c.id = CASE OLD.side WHEN 'before' THEN t.before_of ELSE t.after_of END
        WHERE t.number = OLD.trail_number AND c.forgotten_on IS NOT NULL
            AND (OLD.side = 'before' OR EXISTS (
                SELECT 1 FROM trail later WHERE later.entry = t.entry AND later.kind = t.kind
                    AND later.number > t.number)))
    THEN RAISE EXCEPTION 'what the trail says goes only when its customer is forgotten'; END IF;
    RETURN OLD;
END $$;
CREATE TRIGGER trail_value_only_forgotten BEFORE DELETE ON trail_value
    FOR EACH ROW EXECUTE FUNCTION trail_value_is_only_forgotten();
