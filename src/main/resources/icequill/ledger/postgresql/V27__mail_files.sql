-- A step that stands at no site says whose it is, so that it is forgotten with its customer.
ALTER TABLE life_step ADD COLUMN customer_id TEXT REFERENCES customer (id);
CREATE INDEX life_step_customer ON life_step (customer_id);
CREATE OR REPLACE FUNCTION life_step_is_only_forgotten() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN
    IF NEW.kind IS DISTINCT FROM OLD.kind OR NEW.id IS DISTINCT FROM OLD.id
        OR NEW.position IS DISTINCT FROM OLD.position OR NEW.event IS DISTINCT FROM OLD.event
        OR NEW.dated IS DISTINCT FROM OLD.dated OR NEW.said IS DISTINCT FROM OLD.said
        OR NEW.noted_at IS DISTINCT FROM OLD.noted_at OR NEW.customer_id IS DISTINCT FROM OLD.customer_id
        OR (NEW.personal IS DISTINCT FROM OLD.personal AND (NEW.personal IS DISTINCT FROM '{}' OR NOT EXISTS (
            SELECT 1 FROM customer WHERE forgotten_on IS NOT NULL
            AND id IN (OLD.customer_id, (SELECT customer_id FROM site WHERE site.id = OLD.site_id)))))
    THEN RAISE EXCEPTION 'a step never changes, unless its customer is forgotten'; END IF;
    RETURN NEW;
END $$;

-- What goes along with a mail and is no paper of the book, as base64 (RFC 4648). The hash is SHA-256 of the bytes.
CREATE TABLE mail_file (
    mail_id    TEXT    NOT NULL,
    position   INTEGER NOT NULL CHECK (position >= 1),
    name       TEXT    NOT NULL,
    media_type TEXT    NOT NULL,
    hash       TEXT    NOT NULL,
    content    TEXT    NOT NULL,
    PRIMARY KEY (mail_id, position)
);
CREATE FUNCTION mail_file_never_changes() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'what goes along with a mail never changes'; END $$;
CREATE FUNCTION mail_file_is_only_forgotten() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN
    IF NOT EXISTS (SELECT 1 FROM life_step JOIN customer ON customer.id = life_step.customer_id
        WHERE life_step.kind = 'MAIL' AND life_step.id = OLD.mail_id AND customer.forgotten_on IS NOT NULL)
    THEN RAISE EXCEPTION 'what goes along with a mail never goes, unless its customer is forgotten'; END IF;
    RETURN OLD;
END $$;
CREATE TRIGGER mail_file_never_changes BEFORE UPDATE OR TRUNCATE ON mail_file
    FOR EACH STATEMENT EXECUTE FUNCTION mail_file_never_changes();
CREATE TRIGGER mail_file_only_forgotten BEFORE DELETE ON mail_file
    FOR EACH ROW EXECUTE FUNCTION mail_file_is_only_forgotten();
