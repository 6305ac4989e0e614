package icequill.web.page;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A month as people type it: 2026-05, 5/2026, May 2026, mayo de 2026, or May for the last one that began. */
final class TypedMonth {

    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})\\s*[/.-]\\s*(\\d{4})");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})\\s*[/.-]\\s*(\\d{1,2})");
    private static final Pattern ALONE = Pattern.compile("(\\p{L}{3,})[.]?");
    private static final Pattern NAMED = Pattern.compile("(\\p{L}{3,})[.]?\\s+(?:de\\s+)?(\\d{4})");

    private TypedMonth() {
    }

    /** As the office asks for it, 2026-05; what is no month stays as it is, and is told there. */
    static String text(String typed, LocalDate today) {
        Matcher numbers = NUMBERS.matcher(typed);
        Matcher yearFirst = YEAR_FIRST.matcher(typed);
        Matcher named = NAMED.matcher(typed);
        if (numbers.matches()) {
            return text(numbers.group(2), Integer.parseInt(numbers.group(1)));
        }
        if (yearFirst.matches()) {
            return text(yearFirst.group(1), Integer.parseInt(yearFirst.group(2)));
        }
        Matcher alone = ALONE.matcher(typed);
        if (alone.matches()) {
            return MonthName.of(alone.group(1)).map(month -> last(month, YearMonth.from(today)).toString())
                    .orElse(typed);
        }
        return named.matches()
                ? MonthName.of(named.group(1)).map(month -> text(named.group(2), month.getValue())).orElse(typed)
                : typed;
    }

    private static YearMonth last(Month month, YearMonth now) {
        YearMonth thisYear = now.withMonth(month.getValue());
        return thisYear.isAfter(now) ? thisYear.minusYears(1) : thisYear;
    }

    private static String text(String year, int month) {
        return year + "-" + (month < 10 ? "0" : "") + month;
    }
}
