-- What a withdrawal says of a person goes when the customer is forgotten; that there was one, and when, stays.
DROP TRIGGER visit_withdrawn_never_changes;
UPDATE visit_withdrawn SET reason = '' WHERE visit_id IN (
    SELECT visit.id FROM visit JOIN site ON site.id = visit.site_id JOIN customer ON customer.id = site.customer_id
    WHERE customer.forgotten_on IS NOT NULL);
CREATE TRIGGER visit_withdrawn_never_changes BEFORE UPDATE ON visit_withdrawn
WHEN NEW.visit_id IS NOT OLD.visit_id OR NEW.withdrawn_at IS NOT OLD.withdrawn_at OR NEW.reason IS NOT ''
    OR NOT EXISTS (
        SELECT 1 FROM visit JOIN site ON site.id = visit.site_id JOIN customer ON customer.id = site.customer_id
        WHERE visit.id = OLD.visit_id AND customer.forgotten_on IS NOT NULL)
BEGIN SELECT RAISE(ABORT, 'a withdrawal never changes, unless its customer is forgotten'); END;
