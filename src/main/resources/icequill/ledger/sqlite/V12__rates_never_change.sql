CREATE TRIGGER rates_version_never_changes BEFORE UPDATE ON rates_version
BEGIN SELECT RAISE(ABORT, 'a version of the rates never changes'); END;
CREATE TRIGGER rates_version_never_goes BEFORE DELETE ON rates_version
BEGIN SELECT RAISE(ABORT, 'a version of the rates never goes'); END;
CREATE TRIGGER rates_file_never_changes BEFORE UPDATE ON rates_file
BEGIN SELECT RAISE(ABORT, 'a version of the rates never changes'); END;
CREATE TRIGGER rates_file_never_goes BEFORE DELETE ON rates_file
BEGIN SELECT RAISE(ABORT, 'a version of the rates never goes'); END;
CREATE TRIGGER rates_adopted_never_changes BEFORE UPDATE ON rates_adopted
BEGIN SELECT RAISE(ABORT, 'a version of the rates never changes'); END;
CREATE TRIGGER rates_adopted_never_goes BEFORE DELETE ON rates_adopted
BEGIN SELECT RAISE(ABORT, 'a version of the rates never goes'); END;
