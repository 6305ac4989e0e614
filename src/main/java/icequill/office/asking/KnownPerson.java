package icequill.office.asking;

import java.util.Optional;

/**
 * Somebody who came.
 *
 * @param grade by id, as the labor rates name it; empty where it is still to be asked
 */
record KnownPerson(String name, Optional<String> grade) {

    KnownPerson graded(String id) {
        return new KnownPerson(name, Optional.of(id));
    }
}
