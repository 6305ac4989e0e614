CREATE FUNCTION paper_pdf_never_changes() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE EXCEPTION 'an issued paper never changes'; END $$;
CREATE TRIGGER paper_pdf_never_changes BEFORE UPDATE OR DELETE OR TRUNCATE ON paper_pdf
    FOR EACH STATEMENT EXECUTE FUNCTION paper_pdf_never_changes();
