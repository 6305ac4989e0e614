package icequill.web.visit;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Asked;
import icequill.web.page.TypedMoment;
import icequill.web.page.TypedNumber;
import icequill.web.page.TypedTime;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands in the fields of a visit's page, what is wrong with it, and where each place of the visit's form was typed. */
final class Typing {

    private final Asked asked;
    private final Problems problems = new Problems();
    private final Map<String, String> fields = new LinkedHashMap<>();

    Typing(Asked asked) {
        this.asked = asked;
    }

    Optional<String> text(String field) {
        return asked.text(field);
    }

    List<String> texts(String field) {
        return asked.texts(field);
    }

    /** Which fields there are. */
    Set<String> names() {
        return asked.fields().keySet();
    }

    /** How many rows there are of which anything was typed, such as of {@code person0name}: those that are empty in between count. */
    int rows(String row) {
        Pattern field = Pattern.compile(Pattern.quote(row) + "(\\d{1,4})(?!\\d).*");
        return names().stream().filter(name -> !texts(name).isEmpty()).map(field::matcher).filter(Matcher::matches)
                .mapToInt(found -> Integer.parseInt(found.group(1)) + 1).max().orElse(0);
    }

    Optional<BigDecimal> number(String field) {
        return text(field).flatMap(text -> problems.take(TypedNumber.of(text, field)));
    }

    Optional<LocalDate> day(String field) {
        return text(field).flatMap(text -> problems.take(TypedMoment.day(text, field)));
    }

    Optional<TypedTime> time(String field) {
        return text(field).flatMap(text -> problems.take(TypedMoment.time(text, field)));
    }

    /** One that has to be there. */
    Optional<TypedTime> time(String field, String missing) {
        return text(field).isPresent() ? time(field) : missing(field, missing);
    }

    <T> Optional<T> missing(String field, String message) {
        wrong(Code.MISSING, field, message, "");
        return Optional.empty();
    }

    void wrong(Code code, String field, String message, String allowed) {
        problems.add(code, new Place("", 0, field), message, allowed);
    }

    /** What was typed in a row whose first field says nothing would be lost. */
    void unnamed(String field, List<String> others, String message) {
        if (text(field).isEmpty() && others.stream().anyMatch(other -> text(other).isPresent())) {
            missing(field, message);
        }
    }

    /** Says in which field a place of the visit's form was typed. */
    void place(String path, String field) {
        fields.put(path, field);
    }

    <T> Validated<T> or(Supplier<T> value) {
        return problems.or(value);
    }

    /** The problems, each at the field in which it was typed. */
    List<Problem> atFields(List<Problem> found) {
        return found.stream().map(problem -> new Problem(problem.code(),
                new Place("", 0, field(problem.place().path())), problem.message(), problem.allowed())).toList();
    }

    private String field(String path) {
        return fields.entrySet().stream().filter(entry -> path.startsWith(entry.getKey()))
                .max(Map.Entry.comparingByKey()).map(Map.Entry::getValue).orElse(path);
    }
}
