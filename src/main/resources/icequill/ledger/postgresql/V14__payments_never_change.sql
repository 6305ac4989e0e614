-- A merge gives a payment another customer, and forgetting him takes out what the payer wrote and why it was withdrawn.
CREATE FUNCTION payment_never_goes() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'a payment never changes'; END $$;
CREATE FUNCTION payment_is_only_forgotten() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN
    IF NEW.id IS DISTINCT FROM OLD.id OR NEW.paid_on IS DISTINCT FROM OLD.paid_on
        OR NEW.currency IS DISTINCT FROM OLD.currency OR NEW.amount_minor IS DISTINCT FROM OLD.amount_minor
        OR NEW.way IS DISTINCT FROM OLD.way OR NEW.went_back IS DISTINCT FROM OLD.went_back
        OR NEW.noted_at IS DISTINCT FROM OLD.noted_at
        OR (NEW.reference IS DISTINCT FROM OLD.reference AND (NEW.reference IS NOT NULL OR NOT EXISTS (
            SELECT 1 FROM customer WHERE customer.id = OLD.customer_id AND customer.forgotten_on IS NOT NULL)))
    THEN RAISE EXCEPTION 'a payment never changes'; END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER payment_never_changes BEFORE UPDATE ON payment
    FOR EACH ROW EXECUTE FUNCTION payment_is_only_forgotten();
CREATE TRIGGER payment_never_goes BEFORE DELETE OR TRUNCATE ON payment
    FOR EACH STATEMENT EXECUTE FUNCTION payment_never_goes();
CREATE TRIGGER payment_share_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON payment_share
    FOR EACH STATEMENT EXECUTE FUNCTION payment_never_goes();
CREATE FUNCTION payment_withdrawal_is_only_forgotten() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN
    IF NEW.payment_id IS DISTINCT FROM OLD.payment_id OR NEW.withdrawn_at IS DISTINCT FROM OLD.withdrawn_at
        OR NEW.reason IS DISTINCT FROM '' OR NOT EXISTS (
            SELECT 1 FROM payment JOIN customer ON customer.id = payment.customer_id
            WHERE payment.id = OLD.payment_id AND customer.forgotten_on IS NOT NULL)
    THEN RAISE EXCEPTION 'a withdrawal never changes, unless its customer is forgotten'; END IF;
    RETURN NEW;
END $$;
CREATE TRIGGER payment_withdrawn_never_changes BEFORE UPDATE ON payment_withdrawn
    FOR EACH ROW EXECUTE FUNCTION payment_withdrawal_is_only_forgotten();
CREATE TRIGGER payment_withdrawn_never_goes BEFORE DELETE OR TRUNCATE ON payment_withdrawn
    FOR EACH STATEMENT EXECUTE FUNCTION withdrawal_never_changes();
