package icequill.tax;

import icequill.party.Timeline;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The tax rules of all places, dated. */
public record TaxRules(Timeline<List<TaxPlace>> places) {

    /**
     * The rules of a place on a day. A place without rules is a problem, never a rate of zero.
     *
     * @param id empty when the site names no place
     * @param asked where the place is named
     */
    public Validated<TaxPlace> at(LocalDate day, Optional<String> id, Place asked) {
        List<TaxPlace> known = places.at(day).orElse(List.of());
        if (id.isEmpty()) {
            return Validated.invalid(new Problem(Code.NO_TAX_RULE, asked, "no tax place is named",
                    "add taxPlace; " + Problem.oneOf("", ids(known))));
        }
        return known.stream().filter(place -> place.id().equals(id.get())).findFirst().map(Validated::valid)
                .orElseGet(() -> Validated.invalid(new Problem(Code.NO_TAX_RULE, asked,
                        "no tax rule for \"" + id.get() + "\" on " + day, Problem.oneOf(id.get(), ids(known)))));
    }

    private static List<String> ids(List<TaxPlace> places) {
        return places.stream().map(TaxPlace::id).toList();
    }
}
