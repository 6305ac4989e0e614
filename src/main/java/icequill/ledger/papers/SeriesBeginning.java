package icequill.ledger.papers;

import icequill.explain.ConstantKey;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.Optional;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** What stands in the way of the first number of a series. */
record SeriesBeginning(Handle handle, Series series) {

    /** Letters that tell something else apart already; nothing once the series has begun. */
    Optional<Problem> clash() {
        return hasBegun()
                ? Optional.empty()
                : Stream.concat(otherKind().stream(), otherOffice().stream()).findFirst();
    }

    private boolean hasBegun() {
        return handle.createQuery("SELECT 1 FROM series WHERE kind = :kind AND office = :office AND year = :year")
                .bind("kind", series.kind().name()).bind("office", series.office()).bind("year", series.year())
                .mapTo(Integer.class).findOne().isPresent();
    }

    private Optional<Problem> otherKind() {
        return handle
                .createQuery("SELECT kind FROM series WHERE letters = :letters AND office = :office AND year = :year")
                .bind("letters", series.letters()).bind("office", series.office()).bind("year", series.year())
                .mapTo(String.class).findOne()
                .map(kind -> problem("numbers of the kind " + ConstantKey.words(kind) + " begin with "
                        + series.letters() + " in " + series.year() + " already"));
    }

    private Optional<Problem> otherOffice() {
        return handle.createQuery("SELECT office FROM series WHERE upper(office) = :letters LIMIT 1")
                .bind("letters", series.letters()).mapTo(String.class).findOne()
                .map(office -> problem("the letters " + series.letters() + " are the mark of the office " + office));
    }

    private Problem problem(String message) {
        return new Problem(Code.ALREADY_EXISTS, Place.NOWHERE, message,
                "other letters for " + ConstantKey.of(series.kind()) + " (book: letters: in shop.yaml)");
    }
}
