package icequill.pricer;

import icequill.party.Machine;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.work.Visit.Named;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Function;

/** Finds what a visit names, and reports what there is not. */
record KnownNames(Site site, Problems problems) {

    /**
     * One of those that there are.
     *
     * @param kind as the problem is to call it
     */
    <T> Optional<T> find(Named name, String kind, Collection<T> known, Function<T, String> id) {
        Optional<T> found = known.stream().filter(candidate -> id.apply(candidate).equals(name.id())).findFirst();
        if (found.isEmpty()) {
            problems.add(Problem.unknownName(name.place(), kind, name.id(), known.stream().map(id).toList()));
        }
        return found;
    }

    /** A machine of the site. */
    Optional<Machine> machine(String id, Place place) {
        return find(new Named(id, place), "machine", site.machines(), Machine::id);
    }
}
