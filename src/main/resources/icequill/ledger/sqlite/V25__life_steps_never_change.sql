-- A merge gives a step another site, and forgetting a customer takes out what is personal.
CREATE TRIGGER life_step_never_changes BEFORE UPDATE ON life_step
WHEN NEW.kind IS NOT OLD.kind OR NEW.id IS NOT OLD.id OR NEW.position IS NOT OLD.position
    OR NEW.event IS NOT OLD.event OR NEW.dated IS NOT OLD.dated OR NEW.said IS NOT OLD.said
    OR NEW.noted_at IS NOT OLD.noted_at
    OR (NEW.personal IS NOT OLD.personal AND (NEW.personal IS NOT '{}' OR NOT EXISTS (
        SELECT 1 FROM site JOIN customer ON customer.id = site.customer_id
        WHERE site.id = OLD.site_id AND customer.forgotten_on IS NOT NULL)))
BEGIN SELECT RAISE(ABORT, 'a step never changes, unless its customer is forgotten'); END;
CREATE TRIGGER life_step_never_goes BEFORE DELETE ON life_step
BEGIN SELECT RAISE(ABORT, 'a step never goes'); END;
