package icequill.office.care;

import icequill.answer.history.Period;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/**
 * A month or a span of days, as somebody asks for it.
 *
 * @param month such as {@code 2026-05}
 * @param until the last day
 */
public record AskedPeriod(Optional<String> month, Optional<LocalDate> from, Optional<LocalDate> until) {

    /** As long as there is anything. */
    public static final AskedPeriod EVER = new AskedPeriod(Optional.empty(), Optional.empty(), Optional.empty());

    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2149;

    boolean isEmpty() {
        return month.isEmpty() && from.isEmpty() && until.isEmpty();
    }

    /** The days, or that there are none such. */
    public Validated<Period> period() {
        Problems problems = new Problems();
        if (month.isPresent() && (from.isPresent() || until.isPresent())) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                    "--month " + month.get() + " and --from or --until ask for days in two ways",
                    "one or the other");
        }
        if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
            problems.add(Code.OUT_OF_RANGE, Place.NOWHERE,
                    "--until " + until.get() + " is before --from " + from.get(), "a last day on or after the first");
        }
        Optional<YearMonth> found = month.flatMap(text -> month(text, problems));
        return problems.or(() -> found.map(Period::of).orElseGet(() -> new Period(from, until)));
    }

    private static Optional<YearMonth> month(String text, Problems problems) {
        try {
            YearMonth month = YearMonth.parse(text);
            if (month.getYear() >= FIRST_YEAR && month.getYear() <= LAST_YEAR) {
                return Optional.of(month);
            }
            problems.add(Code.OUT_OF_RANGE, Place.NOWHERE, "the month " + text + " is too far off",
                    "a year from " + FIRST_YEAR + " to " + LAST_YEAR);
        } catch (DateTimeParseException none) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE, "there is no month \"" + text + "\"",
                    "write it as 2026-05");
        }
        return Optional.empty();
    }
}
