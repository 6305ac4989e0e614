-- A step that stands at no site says whose it is, so that it is forgotten with its customer.
ALTER TABLE life_step ADD COLUMN customer_id TEXT REFERENCES customer (id);
CREATE INDEX life_step_customer ON life_step (customer_id);
DROP TRIGGER life_step_never_changes;
CREATE TRIGGER life_step_never_changes BEFORE UPDATE ON life_step
WHEN NEW.kind IS NOT OLD.kind OR NEW.id IS NOT OLD.id OR NEW.position IS NOT OLD.position
    OR NEW.event IS NOT OLD.event OR NEW.dated IS NOT OLD.dated OR NEW.said IS NOT OLD.said
    OR NEW.noted_at IS NOT OLD.noted_at OR NEW.customer_id IS NOT OLD.customer_id
    OR (NEW.personal IS NOT OLD.personal AND (NEW.personal IS NOT '{}' OR NOT EXISTS (
        SELECT 1 FROM customer WHERE forgotten_on IS NOT NULL
        AND id IN (OLD.customer_id, (SELECT customer_id FROM site WHERE site.id = OLD.site_id)))))
BEGIN SELECT RAISE(ABORT, 'a step never changes, unless its customer is forgotten'); END;

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
CREATE TRIGGER mail_file_never_changes BEFORE UPDATE ON mail_file
BEGIN SELECT RAISE(ABORT, 'what goes along with a mail never changes'); END;
CREATE TRIGGER mail_file_only_forgotten BEFORE DELETE ON mail_file
WHEN NOT EXISTS (SELECT 1 FROM life_step JOIN customer ON customer.id = life_step.customer_id
    WHERE life_step.kind = 'MAIL' AND life_step.id = OLD.mail_id AND customer.forgotten_on IS NOT NULL)
BEGIN SELECT RAISE(ABORT, 'what goes along with a mail never goes, unless its customer is forgotten'); END;
