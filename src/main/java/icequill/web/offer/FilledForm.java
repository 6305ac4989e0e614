package icequill.web.offer;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Asked;
import icequill.web.page.FieldPlaces;
import icequill.web.page.TypedDay;
import icequill.web.page.TypedMoment;
import icequill.web.page.TypedNumber;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The keys and values of a form in the making, each by its path such as {@code survey.machines[0].note}.
 *
 * @param problems what cannot be read is added here
 */
record FilledForm(Asked asked, Problems problems, Map<String, Object> values, FieldPlaces places) {

    private static final Pattern STEP = Pattern.compile("([A-Za-z0-9-]+)(?:\\[(\\d+)])?(?:\\.(.+))?");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");

    static FilledForm of(Asked asked, Problems problems) {
        return new FilledForm(asked, problems, new LinkedHashMap<>(), new FieldPlaces());
    }

    /** A text, where one was typed. */
    FilledForm text(String path, String field) {
        return typed(path, field, (text, where) -> Validated.valid(text));
    }

    /** A text, or else another. */
    FilledForm text(String path, String field, String otherwise) {
        return put(path, asked.text(field).orElse(otherwise), field);
    }

    FilledForm number(String path, String field) {
        return typed(path, field, TypedNumber::of);
    }

    FilledForm day(String path, String field) {
        return typed(path, field, (text, where) -> TypedDay.of(text, asked.reader(), where).map(String::valueOf));
    }

    FilledForm time(String path, String field) {
        return typed(path, field, (text, where) -> TypedMoment.time(text, where).map(time -> time.time().toString()));
    }

    FilledForm whole(String path, String field) {
        return typed(path, field, FilledForm::wholeNumber);
    }

    /** A whole number. */
    private static Validated<Integer> wholeNumber(String text, String field) {
        return WHOLE.matcher(text).matches()
                ? Validated.valid(Integer.valueOf(text))
                : Validated.invalid(new Problem(Code.WRONG_TYPE, new Place("", 0, field),
                        "\"" + text + "\" is no whole number", "a number such as 12"));
    }

    private <T> FilledForm typed(String path, String field, BiFunction<String, String, Validated<T>> reading) {
        places.put(path, field);
        asked.text(field).flatMap(text -> problems.take(reading.apply(text, field)))
                .ifPresent(value -> put(path, value, field));
        return this;
    }

    /** A value that stands for a field. */
    FilledForm put(String path, Object value, String field) {
        places.put(path, field);
        put(values, path, value);
        return this;
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, Object> in, String path, Object value) {
        Matcher step = STEP.matcher(path);
        if (!step.matches()) {
            throw new IllegalArgumentException("no path: " + path);
        }
        Optional<String> rest = Optional.ofNullable(step.group(3));
        if (step.group(2) != null) {
            List<Object> rows = (List<Object>) in.computeIfAbsent(step.group(1), key -> new ArrayList<>());
            int row = Integer.parseInt(step.group(2));
            while (rows.size() <= row) {
                rows.add(new LinkedHashMap<String, Object>());
            }
            rest.ifPresentOrElse(more -> put((Map<String, Object>) rows.get(row), more, value),
                    () -> rows.set(row, value));
        } else {
            rest.ifPresentOrElse(
                    more -> put((Map<String, Object>) in.computeIfAbsent(step.group(1),
                            key -> new LinkedHashMap<String, Object>()), more, value),
                    () -> in.put(step.group(1), value));
        }
    }

    /** The field that a problem is about. */
    Optional<String> field(Problem problem) {
        return places.field(problem);
    }
}
