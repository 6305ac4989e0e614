package icequill.ledger;

import icequill.problem.Check;

/**
 * A run of numbers without gaps: 1, 2, 3, ...
 *
 * @param office lower-case letters and digits; empty where a shop has but one
 * @param year of the papers' dates, 1900 to 9999
 */
public record Series(PaperKind kind, String office, int year) {

    public Series {
        Check.that(office.matches("[a-z0-9]{0,12}"), "office is \"" + office + "\", must be up to 12 of a-z and 0-9");
        Check.inRange(year, 1900, 9999, "year");
    }

    /**
     * The series that a row says.
     *
     * @throws DamagedRow when there is none such
     */
    static Series stored(String kind, String office, String year) {
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

    /** Whether a text is one of its numbers. */
    boolean has(String number) {
        return number.startsWith(text() + "-") && number.substring(text().length() + 1).matches("[0-9]{5,10}");
    }

    /** {@code INV-2026}. */
    public String text() {
        return kind.prefix() + (office.isEmpty() ? "" : "-" + office) + "-" + year;
    }
}
