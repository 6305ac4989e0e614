package icequill.web.page;

import icequill.files.yaml.Languages;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A day as people type it: 2026-05-14, 14 May, 5/14, 14/5/2026, today. In figures its parts stand as the shop's country writes them; where
 * the reader's language has another order, or the nearest year is not plain, it is asked and not guessed.
 */
public final class TypedDay {

    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})\\s*[-/.]\\s*(\\d{1,2})\\s*[-/.]\\s*(\\d{1,2})");
    private static final Pattern FIGURES = Pattern
            .compile("(\\d{1,2})\\s*[-/.]\\s*(\\d{1,2})(?:\\s*[-/.]\\s*(\\d{4}|\\d{2}))?[.]?");
    private static final Pattern DAY_FIRST = Pattern
            .compile(
                    "(\\d{1,2})(?:st|nd|rd|th|o|\u00ba)?[\\s.-]*(?:de\\s+|of\\s+)?(\\p{L}{3,})[.,]?[\\s-]*(?:de[l]?\\s+)?(\\d{4})?");
    private static final Pattern MONTH_FIRST = Pattern
            .compile("(\\p{L}{3,})[.]?[\\s-]*(\\d{1,2})(?:st|nd|rd|th)?(?:[,\\s]+(\\d{4}))?");
    /** Words for the days around this one, each with how many days after it they are. */
    private static final Map<String, Integer> NEAR = Map.of("today", 0, "yesterday", -1, "tomorrow", 1);
    private static final int CENTURY = 2000;
    private static final int SHORT_YEAR = 100;
    /** A day without its year is that of the nearest one, if it is less than a quarter of a year away. */
    private static final int PLAIN_DAYS = 92;

    private TypedDay() {
    }

    /** The day by a clock and in the zone of its shop. */
    public static Validated<LocalDate> of(String text, Reader reader, String field) {
        String typed = MonthName.plain(text).strip();
        Matcher yearFirst = YEAR_FIRST.matcher(typed);
        if (yearFirst.matches()) {
            return one(date(yearFirst.group(1), number(yearFirst.group(2)), number(yearFirst.group(3))), text, field);
        }
        Optional<LocalDate> near = near(typed, reader.today());
        if (near.isPresent()) {
            return Validated.valid(near.get());
        }
        Matcher figures = FIGURES.matcher(typed);
        if (figures.matches()) {
            return inFigures(figures, reader, text, field);
        }
        return named(typed).map(day -> dated(day, reader, text, field)).orElseGet(() -> none(text, field));
    }

    /** A day and a month, and what was typed of its year. */
    private record Named(int day, int month, Optional<String> year) {}

    private static Optional<LocalDate> near(String typed, LocalDate today) {
        return NEAR.entrySet().stream().filter(day -> Languages.known().stream()
                .map(language -> Sentences.of(language, "").word("page.typed." + day.getKey()))
                .anyMatch(word -> MonthName.plain(word).equals(typed)))
                .map(day -> today.plusDays(day.getValue())).findFirst();
    }

    private static Optional<Named> named(String typed) {
        Matcher dayFirst = DAY_FIRST.matcher(typed);
        Matcher monthFirst = MONTH_FIRST.matcher(typed);
        return dayFirst.matches()
                ? named(dayFirst.group(1), dayFirst.group(2), dayFirst.group(3))
                : monthFirst.matches()
                        ? named(monthFirst.group(2), monthFirst.group(1), monthFirst.group(3))
                        : Optional.empty();
    }

    private static Optional<Named> named(String day, String month, @Nullable String year) {
        return MonthName.of(month).map(Month::getValue)
                .map(number -> new Named(number(day), number, Optional.ofNullable(year)));
    }

    private static Validated<LocalDate> inFigures(Matcher figures, Reader reader, String text, String field) {
        int first = number(figures.group(1));
        int second = number(figures.group(2));
        Optional<String> year = Optional.ofNullable(figures.group(3));
        Named dayFirst = new Named(first, second, year);
        Named monthFirst = new Named(second, first, year);
        boolean canBeBoth = first <= Month.values().length && second <= Month.values().length && first != second;
        if (!canBeBoth) {
            return dated(second > Month.values().length ? monthFirst : dayFirst, reader, text, field);
        }
        return switch (reader.sentences().formats().dayOrder()) {
        case DAY_FIRST -> dated(dayFirst, reader, text, field);
        case MONTH_FIRST -> dated(monthFirst, reader, text, field);
        case UNCLEAR -> Validated.invalid(new Problem(Code.NOT_ALLOWED, new Place("", 0, field),
                "\"" + text + "\" can be read in two ways", "the month by its name, as in 14 May"));
        };
    }

    private static Validated<LocalDate> dated(Named named, Reader reader, String text, String field) {
        if (named.year().isPresent()) {
            return one(date(named.year().get(), named.month(), named.day()), text, field);
        }
        LocalDate today = reader.today();
        List<LocalDate> years = Stream.of(-1, 0, 1)
                .flatMap(step -> date(String.valueOf(today.getYear() + step), named.month(), named.day()).stream())
                .sorted(Comparator.comparingLong(day -> away(day, today))).toList();
        if (!years.isEmpty() && away(years.getFirst(), today) >= PLAIN_DAYS) {
            List<LocalDate> asked = new ArrayList<>(years.subList(0, Math.min(2, years.size())));
            asked.sort(Comparator.naturalOrder());
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, new Place("", 0, field),
                    "of which year is \"" + text + "\"?",
                    String.join(", ", asked.stream().map(LocalDate::toString).toList())));
        }
        return one(years.stream().findFirst(), text, field);
    }

    private static long away(LocalDate day, LocalDate today) {
        return Math.abs(ChronoUnit.DAYS.between(today, day));
    }

    private static Optional<LocalDate> date(String year, int month, int day) {
        int number = number(year);
        try {
            return Optional.of(LocalDate.of(number < SHORT_YEAR ? CENTURY + number : number, month, day));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }

    private static Validated<LocalDate> one(Optional<LocalDate> day, String text, String field) {
        return day.map(Validated::valid).orElseGet(() -> none(text, field));
    }

    private static Validated<LocalDate> none(String text, String field) {
        return Validated.invalid(new Problem(Code.WRONG_TYPE, new Place("", 0, field),
                "there is no day \"" + text + "\"", "a day such as 14 May, 2026-05-14, or today"));
    }
}
