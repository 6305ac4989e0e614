package icequill.planted.knot;

import java.util.List;

/** Needs one that needs it. */
public record Other(List<String> names) {

    static One one() {
        return new One(new Other(List.of()));
    }
}
