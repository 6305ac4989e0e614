package icequill.days;

import java.util.Optional;

/**
 * A stay within the day of a person; times are minutes since midnight.
 *
 * @param name of the visit or call, or the key of a visit that is placed here
 * @param from before which it does not begin
 * @param until when it has to be over
 * @param minutes it takes
 * @param isFixed whether somebody fixed it: then it begins at {@code from}
 * @param site what its site is called; empty where that does not matter
 */
record Stop(String name, Road road, int from, int until, int minutes, boolean isFixed, Optional<String> site) {}
