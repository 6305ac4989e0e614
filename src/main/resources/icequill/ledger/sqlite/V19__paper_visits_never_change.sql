CREATE TRIGGER further_visit_never_changes BEFORE UPDATE ON paper_further_visit
BEGIN SELECT RAISE(ABORT, 'an issued paper never changes'); END;
CREATE TRIGGER further_visit_never_goes BEFORE DELETE ON paper_further_visit
BEGIN SELECT RAISE(ABORT, 'an issued paper never goes'); END;
