package icequill.answer.rates;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What putting a folder's rates into force did, or would do.
 *
 * @param version of the folder, by id
 * @param before in force before it; empty where none was
 * @param isAdopted whether it is in force now
 */
public record AdoptedRates(String version, Optional<String> before, ToldChanges changes, boolean isAdopted) {

    /** The same when it was done. */
    public AdoptedRates adopted() {
        return new AdoptedRates(version, before, changes, true);
    }

    public Stream<String> lines() {
        if (isAdopted && before.filter(version::equals).isPresent()) {
            return Stream.of("Version " + version + " is in force already.");
        }
        String what = isAdopted ? "Adopted version " : "Would adopt version ";
        return Stream.concat(
                Stream.of(what + version + before.map(id -> " in place of " + id + ":").orElse(", the first.")),
                changes.lines());
    }
}
