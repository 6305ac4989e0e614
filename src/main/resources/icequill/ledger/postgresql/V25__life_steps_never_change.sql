-- A merge gives a step another site, and forgetting a customer takes out what is personal.
CREATE FUNCTION life_step_never_goes() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'a step never goes'; END $$;
CREATE FUNCTION life_step_is_only_forgotten() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN
    IF NEW.kind IS DISTINCT FROM OLD.kind OR NEW.id IS DISTINCT FROM OLD.id
        OR NEW.position IS DISTINCT FROM OLD.position OR NEW.event IS DISTINCT FROM OLD.event
        OR NEW.dated IS DISTINCT FROM OLD.dated OR NEW.said IS DISTINCT FROM OLD.said
        OR NEW.noted_at IS DISTINCT FROM OLD.noted_at
        OR (NEW.personal IS DISTINCT FROM OLD.personal AND (NEW.personal IS DISTINCT FROM '{}' OR NOT EXISTS (
            SELECT 1 FROM site JOIN customer ON customer.id = site.customer_id
            WHERE site.id = OLD.site_id AND customer.forgotten_on IS NOT NULL)))
    THEN RAISE EXCEPTION 'a step never changes, unless its customer is forgotten'; END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER life_step_never_changes BEFORE UPDATE ON life_step
    FOR EACH ROW EXECUTE FUNCTION life_step_is_only_forgotten();
CREATE TRIGGER life_step_never_goes BEFORE DELETE OR TRUNCATE ON life_step
    FOR EACH STATEMENT EXECUTE FUNCTION life_step_never_goes();
