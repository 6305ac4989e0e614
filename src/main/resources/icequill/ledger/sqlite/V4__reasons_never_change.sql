CREATE TRIGGER visit_withdrawn_never_changes BEFORE UPDATE ON visit_withdrawn
BEGIN SELECT RAISE(ABORT, 'a withdrawal never changes'); END;
CREATE TRIGGER visit_withdrawn_never_goes BEFORE DELETE ON visit_withdrawn
BEGIN SELECT RAISE(ABORT, 'a withdrawal never goes'); END;
CREATE TRIGGER paper_backdated_never_changes BEFORE UPDATE ON paper_backdated
BEGIN SELECT RAISE(ABORT, 'the reason of an issued paper never changes'); END;
CREATE TRIGGER paper_backdated_never_goes BEFORE DELETE ON paper_backdated
BEGIN SELECT RAISE(ABORT, 'the reason of an issued paper never goes'); END;
