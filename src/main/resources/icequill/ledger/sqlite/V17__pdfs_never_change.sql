CREATE TRIGGER paper_pdf_never_changes BEFORE UPDATE ON paper_pdf
BEGIN SELECT RAISE(ABORT, 'an issued paper never changes'); END;
CREATE TRIGGER paper_pdf_never_goes BEFORE DELETE ON paper_pdf
BEGIN SELECT RAISE(ABORT, 'an issued paper never goes'); END;
