package icequill.render.words;

import java.time.LocalDate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The ways in which a language writes a day in full, its own words for months included. */
public record DateForms(Words words) {

    private static final int MONTHS = 12;

    /** With the day before the month, or behind it where the country puts it there. */
    String written(LocalDate day, boolean monthFirst) {
        return form(monthFirst, String.valueOf(day.getDayOfMonth()), words.text("month." + day.getMonthValue()),
                String.valueOf(day.getYear()));
    }

    /** A regular expression that finds them in a text. */
    public String pattern() {
        String months = IntStream.rangeClosed(1, MONTHS).mapToObj(month -> Pattern.quote(words.text("month." + month)))
                .collect(Collectors.joining("|", "(?:", ")"));
        return form(false, "\\d{1,2}", months, "\\d{4}") + "|" + form(true, "\\d{1,2}", months, "\\d{4}");
    }

    private String form(boolean monthFirst, String day, String month, String year) {
        return words.text(monthFirst ? "date.month-first" : "date.day-first").replace("{0}", day)
                .replace("{1}", month).replace("{2}", year);
    }
}
