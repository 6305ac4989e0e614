-- What a withdrawal says of a person goes when the customer is forgotten; that there was one, and when, stays.
DROP TRIGGER visit_withdrawn_never_changes ON visit_withdrawn;
UPDATE visit_withdrawn SET reason = '' WHERE visit_id IN (
    SELECT visit.id FROM visit JOIN site ON site.id = visit.site_id JOIN customer ON customer.id = site.customer_id
    WHERE customer.forgotten_on IS NOT NULL);
CREATE FUNCTION withdrawal_is_only_forgotten() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN
    IF NEW.visit_id IS DISTINCT FROM OLD.visit_id OR NEW.withdrawn_at IS DISTINCT FROM OLD.withdrawn_at
        OR NEW.reason IS DISTINCT FROM '' OR NOT EXISTS (
            SELECT 1 FROM visit JOIN site ON site.id = visit.site_id JOIN customer ON customer.id = site.customer_id
            WHERE visit.id = OLD.visit_id AND customer.forgotten_on IS NOT NULL)
    THEN RAISE EXCEPTION 'a withdrawal never changes, unless its customer is forgotten'; END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER visit_withdrawn_never_changes BEFORE UPDATE ON visit_withdrawn
    FOR EACH ROW EXECUTE FUNCTION withdrawal_is_only_forgotten();
CREATE TRIGGER visit_withdrawn_never_goes BEFORE DELETE OR TRUNCATE ON visit_withdrawn
    FOR EACH STATEMENT EXECUTE FUNCTION withdrawal_never_changes();
