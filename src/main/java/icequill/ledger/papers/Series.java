package icequill.ledger.papers;

import icequill.ledger.store.Column;
import icequill.ledger.store.DamagedRow;
import icequill.problem.Check;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A run of numbers without gaps: 1, 2, 3, ...
 *
 * @param office lower-case letters and digits; empty where a shop has but one
 * @param year of the papers' dates, 1900 to 9999
 */
public record Series(PaperKind kind, String office, int year) {

    private static final Pattern TEXT = Pattern
            .compile("([A-Z]{2,3})(?:-([a-z0-9]{1,12}))?-(19[0-9]{2}|[2-9][0-9]{3})");
    /** Of a position, with the dash before it. */
    private static final int MOST_DIGITS = 10;

    public Series {
        Check.that(office.matches("[a-z0-9]{0,12}"), "office is \"" + office + "\", must be up to 12 of a-z and 0-9");
        Check.inRange(year, 1900, 9999, "year");
    }

    /**
     * The series that a row says.
     *
     * @throws DamagedRow when there is none such
     */
    public static Series stored(String kind, String office, String year) {
        try {
            return new Series(PaperKind.valueOf(kind), office, Column.whole("year", year));
        } catch (IllegalArgumentException none) {
            throw new DamagedRow("there is no series of kind " + kind + ", office \"" + office + "\" and year " + year);
        }
    }

    /** {@code INV-2026-00017}, or {@code INV-north-2026-00017} for an office. */
    public String number(int position) {
        return number(text(), position);
    }

    /** The same in the series of that text. */
    static String number(String series, int position) {
        return series + "-" + (position < 100_000
                ? String.valueOf(100_000 + position).substring(1)
                : String.valueOf(position));
    }

    /** The series of that text, as its folder bears it. */
    public static Optional<Series> ofText(String text) {
        Matcher form = TEXT.matcher(text);
        return form.matches()
                ? Stream.of(PaperKind.values()).filter(kind -> kind.prefix().equals(form.group(1))).findFirst()
                        .map(kind -> new Series(kind, form.group(2) == null ? "" : form.group(2),
                                Integer.parseInt(form.group(3))))
                : Optional.empty();
    }

    /** That of a number; empty where it is none. */
    static Optional<Series> ofNumber(String number) {
        return ofText(number.substring(0, Math.max(0, number.lastIndexOf('-')))).filter(series -> series.has(number));
    }

    /** The position of one of its numbers. */
    public Optional<Integer> position(String number) {
        return has(number) && number.length() - text().length() <= MOST_DIGITS
                ? Optional.of(Integer.parseInt(number.substring(text().length() + 1)))
                : Optional.empty();
    }

    /** Whether a text is one of its numbers. */
    public boolean has(String number) {
        return number.startsWith(text() + "-") && number.substring(text().length() + 1).matches("[0-9]{5,10}");
    }

    /** {@code INV-2026}. */
    public String text() {
        return kind.prefix() + (office.isEmpty() ? "" : "-" + office) + "-" + year;
    }
}
