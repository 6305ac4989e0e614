package icequill.web.page;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalTime;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A time of day as people type it. */
public final class TypedMoment {

    private static final Pattern TIME = Pattern
            .compile("(\\d{1,2})(?:[:.h]?(\\d{2}))?\\s*(am?|pm?)?[.]?(?:\\s*m[.]?)?([+-]\\d{2}:\\d{2})?");
    private static final int NOON = 12;
    private static final int DAY = 24;
    private static final int HOUR = 60;

    private TypedMoment() {
    }

    /** A time as 9:15, 915, 16:20 or 4:20 pm; as 1:30-04:00 where clocks repeat the hour. */
    public static Validated<TypedTime> time(String text, String field) {
        Matcher typed = TIME.matcher(text.toLowerCase(Locale.ROOT));
        if (typed.matches()) {
            int hour = Integer.parseInt(typed.group(1));
            int minute = typed.group(2) == null ? 0 : Integer.parseInt(typed.group(2));
            boolean isHalf = typed.group(3) != null;
            boolean isRight = minute < HOUR && (isHalf ? hour >= 1 && hour <= NOON : hour < DAY);
            if (isRight) {
                int whole = !isHalf ? hour : hour % NOON + (typed.group(3).startsWith("p") ? NOON : 0);
                return Validated.valid(new TypedTime(LocalTime.of(whole, minute),
                        typed.group(4) == null ? "" : typed.group(4)));
            }
        }
        return Validated.invalid(new Problem(Code.WRONG_TYPE, new Place("", 0, field),
                "there is no time \"" + text + "\"", "write it as 9:15, or 4:20 pm"));
    }
}
