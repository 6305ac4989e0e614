package icequill.shop;

import icequill.files.form.ShopZone;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;

/** The days of a shop's work. */
public final class ShopDay {

    private static final LocalDate FIRST = LocalDate.of(2000, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2099, 12, 31);

    private ShopDay() {
    }

    /** Today where the shop is, wherever the machine believes to be; by the clock's own zone where shop.yaml names none. */
    public static LocalDate today(Path folder, Clock clock) {
        return LocalDate.now(clock.withZone(zone(folder, clock)));
    }

    /** Where the shop is; the clock's own zone where shop.yaml names none. */
    public static ZoneId zone(Path folder, Clock clock) {
        return ShopZone.of(folder).orElseGet(clock::getZone);
    }

    /** The day, unless it is still to come. */
    public static Validated<LocalDate> notAhead(LocalDate day, LocalDate today, Place place) {
        return day.isAfter(today)
                ? Validated.invalid(new Problem(Code.OUT_OF_RANGE, place,
                        day + " is still to come: today is " + today, "today or an earlier day"))
                : Validated.valid(day);
    }

    /** The day, unless no paper can bear it: a slip of the pen. */
    public static Validated<LocalDate> likely(LocalDate day, Place place, String what) {
        return day.isBefore(FIRST) || day.isAfter(LAST)
                ? Validated.invalid(new Problem(Code.OUT_OF_RANGE, place, what + " is " + day,
                        "a day from " + FIRST + " to " + LAST))
                : Validated.valid(day);
    }
}
