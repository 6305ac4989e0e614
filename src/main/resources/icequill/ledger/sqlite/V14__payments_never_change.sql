-- A merge gives a payment another customer, and forgetting him takes out what the payer wrote and why it was withdrawn.
CREATE TRIGGER payment_never_changes BEFORE UPDATE ON payment
WHEN NEW.id IS NOT OLD.id OR NEW.paid_on IS NOT OLD.paid_on OR NEW.currency IS NOT OLD.currency
    OR NEW.amount_minor IS NOT OLD.amount_minor OR NEW.way IS NOT OLD.way OR NEW.went_back IS NOT OLD.went_back
    OR NEW.noted_at IS NOT OLD.noted_at
    OR (NEW.reference IS NOT OLD.reference AND (NEW.reference IS NOT NULL OR NOT EXISTS (
        SELECT 1 FROM customer WHERE customer.id = OLD.customer_id AND customer.forgotten_on IS NOT NULL)))
BEGIN SELECT RAISE(ABORT, 'a payment never changes'); END;
CREATE TRIGGER payment_never_goes BEFORE DELETE ON payment
BEGIN SELECT RAISE(ABORT, 'a payment never goes'); END;
CREATE TRIGGER payment_share_never_changes BEFORE UPDATE ON payment_share
BEGIN SELECT RAISE(ABORT, 'a payment never changes'); END;
CREATE TRIGGER payment_share_never_goes BEFORE DELETE ON payment_share
BEGIN SELECT RAISE(ABORT, 'a payment never goes'); END;
CREATE TRIGGER payment_withdrawn_never_changes BEFORE UPDATE ON payment_withdrawn
WHEN NEW.payment_id IS NOT OLD.payment_id OR NEW.withdrawn_at IS NOT OLD.withdrawn_at OR NEW.reason IS NOT ''
    OR NOT EXISTS (
        SELECT 1 FROM payment JOIN customer ON customer.id = payment.customer_id
        WHERE payment.id = OLD.payment_id AND customer.forgotten_on IS NOT NULL)
BEGIN SELECT RAISE(ABORT, 'a withdrawal never changes, unless its customer is forgotten'); END;
CREATE TRIGGER payment_withdrawn_never_goes BEFORE DELETE ON payment_withdrawn
BEGIN SELECT RAISE(ABORT, 'a withdrawal never goes'); END;
