package icequill.web.page;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** What stands in the fields of a page, what is wrong with it, and where each place of the form was typed. */
public final class Typing {

    private final Asked asked;
    private final Problems problems = new Problems();
    private final FieldPlaces places = new FieldPlaces();

    public Typing(Asked asked) {
        this.asked = asked;
    }

    public Optional<String> text(String field) {
        return asked.text(field);
    }

    public List<String> texts(String field) {
        return asked.texts(field);
    }

    /** Which fields there are. */
    public Set<String> names() {
        return asked.fields().keySet();
    }

    /** How many rows of fields something stands in, as the page shows them. */
    public int rows(String before, String... after) {
        return new TypedFields(asked.fields(), List.of()).rows(before, after);
    }

    public Optional<BigDecimal> number(String field) {
        return text(field).flatMap(text -> problems.take(TypedNumber.of(text, field)));
    }

    /** A number that is one of several in a field. */
    public Optional<BigDecimal> part(String text, String field) {
        return problems.take(TypedNumber.of(text, field));
    }

    public Optional<LocalDate> day(String field) {
        return asked.day(field, problems);
    }

    public Optional<TypedTime> time(String field) {
        return text(field).flatMap(text -> problems.take(TypedMoment.time(text, field)));
    }

    /** One that has to be there. */
    public Optional<TypedTime> time(String field, String missing) {
        return text(field).isPresent() ? time(field) : missing(field, missing);
    }

    public <T> Optional<T> missing(String field, String message) {
        wrong(Code.MISSING, field, message, "");
        return Optional.empty();
    }

    public void wrong(Code code, String field, String message, String allowed) {
        problems.add(code, new Place("", 0, field), message, allowed);
    }

    /** What was typed in a row whose first field says nothing would be lost. */
    public void unnamed(String field, List<String> others, String message) {
        if (text(field).isEmpty() && others.stream().anyMatch(other -> text(other).isPresent())) {
            missing(field, message);
        }
    }

    /** Says in which field a place of the form was typed. */
    public void place(String path, String field) {
        places.put(path, field);
    }

    public <T> Validated<T> or(Supplier<T> value) {
        return problems.or(value);
    }

    /** The problems, each at the field in which it was typed. */
    public List<Problem> atFields(List<Problem> found) {
        return found.stream().map(problem -> FieldPlaces
                .at(places.field(problem).orElse(problem.place().path()), problem)).toList();
    }
}
