package icequill.web.page;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.List;
import java.util.function.Function;

/** One of several, as the field of a form says it. */
public final class TypedChoice {

    private TypedChoice() {
    }

    /**
     * The one whose key stands in a field.
     *
     * @param key of each, as the page has it
     */
    public static <T> Validated<T> of(Asked asked, String field, List<T> all, Function<T, String> key) {
        return all.stream().filter(one -> asked.text(field).filter(key.apply(one)::equals).isPresent()).findFirst()
                .map(Validated::valid)
                .orElseGet(() -> Validated.invalid(new Problem(Code.MISSING, new Place("", 0, field),
                        "nothing is chosen", String.join(", ", all.stream().map(key).toList()))));
    }
}
