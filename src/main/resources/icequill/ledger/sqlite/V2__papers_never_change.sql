CREATE TRIGGER paper_never_changes BEFORE UPDATE ON paper
BEGIN SELECT RAISE(ABORT, 'an issued paper never changes'); END;
CREATE TRIGGER paper_never_goes BEFORE DELETE ON paper
BEGIN SELECT RAISE(ABORT, 'an issued paper never goes'); END;
CREATE TRIGGER paper_line_never_changes BEFORE UPDATE ON paper_line
BEGIN SELECT RAISE(ABORT, 'an issued paper never changes'); END;
CREATE TRIGGER paper_line_never_goes BEFORE DELETE ON paper_line
BEGIN SELECT RAISE(ABORT, 'an issued paper never goes'); END;
