package icequill.ledger.papers;

import icequill.ledger.store.DamagedRow;
import icequill.problem.Check;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A run of numbers without gaps: 1, 2, 3, ... Kind, office and year make it; its letters are those that the shop had set when its first
 * paper was issued, and stay.
 *
 * @param letters 1 to 6 capital letters that its numbers begin with; null stands for the usual ones of the kind, as in backups of
 *        earlier versions
 * @param office lower-case letters and digits; empty where a shop has but one
 * @param year of the papers' dates, 1900 to 9999
 */
public record Series(PaperKind kind, String letters, String office, int year) {

    /** As letters, office and year stand in a series' text. */
    public static final String FORM = "[A-Z]{1,6}(?:-[a-z0-9]{1,12})?-[0-9]{4}";
    private static final Pattern TEXT = Pattern
            .compile("([A-Z]{1,6})(?:-([a-z0-9]{1,12}))?-(19[0-9]{2}|[2-9][0-9]{3})");
    /** Of a position, with the dash before it. */
    private static final int MOST_DIGITS = 10;

    public Series(PaperKind kind, @Nullable String letters, String office, int year) {
        this.kind = kind;
        this.letters = letters == null ? kind.usualLetters() : letters;
        this.office = office;
        this.year = year;
        Check.that(this.letters.matches("[A-Z]{1,6}"), "letters are \"" + letters + "\", must be 1 to 6 of A-Z");
        Check.that(office.matches("[a-z0-9]{0,12}"), "office is \"" + office + "\", must be up to 12 of a-z and 0-9");
        Check.inRange(year, 1900, 9999, "year");
    }

    /**
     * The series that a row says.
     *
     * @throws DamagedRow when there is none such
     */
    public static Series stored(String kind, String letters, String office, String year) {
        try {
            return new Series(PaperKind.valueOf(kind), letters, office, Integer.parseInt(year));
        } catch (IllegalArgumentException none) {
            throw new DamagedRow(
                    "there is no series of kind " + kind + ", letters \"" + letters + "\", office \"" + office
                            + "\" and year " + year);
        }
    }

    /** Whether both count the same papers, whatever their letters. */
    public boolean isSameRunAs(Series other) {
        return kind == other.kind && office.equals(other.office) && year == other.year;
    }

    /** The letters that a number begins with. */
    static String lettersOf(String number) {
        return number.substring(0, Math.max(0, number.indexOf('-')));
    }

    /** {@code INV-2026-00017}, or {@code INV-north-2026-00017} for an office. */
    public String number(int position) {
        return number(text(), position);
    }

    /** The same in the series of that text. */
    public static String number(String series, int position) {
        return series + "-" + (position < 100_000
                ? String.valueOf(100_000 + position).substring(1)
                : String.valueOf(position));
    }

    /** The series of a kind that has that text, as its folder bears it. */
    public static Optional<Series> ofText(String text, PaperKind kind) {
        Matcher form = TEXT.matcher(text);
        return form.matches()
                ? Optional.of(new Series(kind, form.group(1), form.group(2) == null ? "" : form.group(2),
                        Integer.parseInt(form.group(3))))
                : Optional.empty();
    }

    /** Whether a text is that of a series. */
    public static boolean isText(String text) {
        return TEXT.matcher(text).matches();
    }

    /** The text of a number's series; empty where it is none. */
    static Optional<String> textOf(String number) {
        return Optional.of(number.substring(0, Math.max(0, number.lastIndexOf('-'))))
                .filter(text -> isText(text) && has(text, number));
    }

    /** The position of one of its numbers. */
    public Optional<Integer> position(String number) {
        return has(number) && number.length() - text().length() <= MOST_DIGITS
                ? Optional.of(Integer.parseInt(number.substring(text().length() + 1)))
                : Optional.empty();
    }

    /** Whether a text is one of its numbers. */
    public boolean has(String number) {
        return has(text(), number);
    }

    private static boolean has(String series, String number) {
        return number.startsWith(series + "-") && number.substring(series.length() + 1).matches("[0-9]{5,10}");
    }

    /** {@code INV-2026}. */
    public String text() {
        return letters + (office.isEmpty() ? "" : "-" + office) + "-" + year;
    }
}
