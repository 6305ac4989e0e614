package icequill.shop;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.Collection;

/** What is said of a name that the book does not hold, of however many. */
public final class UnknownName {

    private UnknownName() {
    }

    /**
     * What is said of a name that the book does not hold.
     *
     * @param otherwise what is allowed when no name is near
     */
    public static Problem name(String kind, String name, Collection<String> known, String otherwise) {
        return new Problem(Code.UNKNOWN_NAME, Place.NOWHERE, "the book has no " + kind + " \"" + name + "\"",
                Problem.nearest(name, known).map(near -> "did you mean \"" + near + "\"?").orElse(otherwise));
    }
}
