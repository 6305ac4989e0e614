package icequill.party;

import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.List;

/** The kinds of sites that a shop tells apart. */
public record SiteKinds(List<SiteKind> all) {

    public SiteKinds {
        all = List.copyOf(all);
    }

    /**
     * The kind of an id, or a problem that names the nearest.
     *
     * @param place where the id stands
     */
    public Validated<SiteKind> named(String id, Place place) {
        return all.stream().filter(kind -> kind.id().equals(id)).findFirst().map(Validated::valid)
                .orElseGet(() -> Validated.invalid(Problem.unknownName(place, "kind of site", id,
                        all.stream().map(SiteKind::id).toList())));
    }
}
