CREATE TRIGGER trail_never_changes BEFORE UPDATE ON trail
BEGIN SELECT RAISE(ABORT, 'the trail never changes'); END;
CREATE TRIGGER trail_never_goes BEFORE DELETE ON trail
BEGIN SELECT RAISE(ABORT, 'the trail never goes'); END;
CREATE TRIGGER trail_value_never_changes BEFORE UPDATE ON trail_value
BEGIN SELECT RAISE(ABORT, 'the trail never changes'); END;
-- What an entry is by now stays as long as the entry does.
CREATE TRIGGER trail_value_only_forgotten BEFORE DELETE ON trail_value
WHEN NOT EXISTS (
    SELECT 1 FROM trail t
        JOIN customer c ON c.id = CASE OLD.side WHEN 'before' THEN t.before_of ELSE t.after_of END
    WHERE t.number = OLD.trail_number AND c.forgotten_on IS NOT NULL
        AND (OLD.side = 'before' OR EXISTS (
            SELECT 1 FROM trail later WHERE later.entry = t.entry AND later.kind = t.kind AND later.number > t.number)))
BEGIN SELECT RAISE(ABORT, 'what the trail says goes only when its customer is forgotten'); END;
