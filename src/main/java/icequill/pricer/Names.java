package icequill.pricer;

import icequill.explain.Fact;
import icequill.party.Wording;
import icequill.problem.Place;

/** Facts made from the shop's own names. */
final class Names {

    private Names() {
    }

    static Fact of(Wording name) {
        return name.named();
    }

    static Fact of(Place place) {
        return new Fact.Text(place.reference());
    }
}
