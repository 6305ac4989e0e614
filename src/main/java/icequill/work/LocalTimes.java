package icequill.work;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/** Turns clock readings into moments. */
public final class LocalTimes {

    private LocalTimes() {
    }

    /**
     * The moment of a clock reading in a zone.
     *
     * @param offset needed for a time that clocks repeat, checked for every other
     */
    public static Validated<ZonedDateTime> resolve(LocalDateTime local, Optional<ZoneOffset> offset, ZoneId zone,
            Place place) {
        List<ZoneOffset> valid = zone.getRules().getValidOffsets(local);
        if (valid.isEmpty()) {
            return Validated.invalid(new Problem(Code.NO_SUCH_TIME, place,
                    local + " does not exist in " + zone + ": clocks go forward over it",
                    "a time before " + zone.getRules().getTransition(local).getDateTimeBefore().toLocalTime()
                            + " or from " + zone.getRules().getTransition(local).getDateTimeAfter().toLocalTime()
                            + " on"));
        }
        if (offset.isPresent() && !valid.contains(offset.get())) {
            return Validated.invalid(new Problem(Code.NO_SUCH_TIME, place,
                    local + " is never at offset " + offset.get() + " in " + zone, "offset " + either(valid)));
        }
        if (offset.isEmpty() && valid.size() > 1) {
            return Validated.invalid(new Problem(Code.AMBIGUOUS_TIME, place,
                    local + " occurs twice in " + zone + ": clocks go back over it",
                    "add the offset, for example " + local + valid.getFirst() + " for the first time or " + local
                            + valid.getLast() + " for the second"));
        }
        return Validated.valid(ZonedDateTime.ofLocal(local, zone, offset.orElse(valid.getFirst())));
    }

    private static String either(List<ZoneOffset> valid) {
        return valid.size() == 1 ? valid.getFirst().toString() : valid.getFirst() + " or " + valid.getLast();
    }
}
