package icequill.web.page;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as people type it, in the form of the United States or of Spain and Mexico alike; what can be read in two ways is asked. */
public final class TypedNumber {

    private static final Pattern PLAIN = Pattern.compile("(\\d{1,9})(?:[.,](\\d{1,2}|\\d{4,6}|(?<=^0[.,])\\d{3}))?");
    private static final Pattern GROUPED = Pattern
            .compile("(\\d{1,3}(?:,\\d{3})+)\\.(\\d{1,6})|(\\d{1,3}(?:\\.\\d{3})+),(\\d{1,6})");

    private TypedNumber() {
    }

    /** The same of one that may be below 0, with any of the signs that are used for it. */
    public static Validated<BigDecimal> signed(String text, String field) {
        return text.matches("[-\u2212].*")
                ? of(text.substring(1).strip(), field).map(BigDecimal::negate)
                : of(text, field);
    }

    /**
     * Reads a number from 0 up.
     *
     * @param field in which it was typed
     */
    public static Validated<BigDecimal> of(String text, String field) {
        String typed = text.replace("\u00a0", "").replace(" ", "");
        Matcher plain = PLAIN.matcher(typed);
        if (plain.matches()) {
            return Validated
                    .valid(new BigDecimal(plain.group(1) + (plain.group(2) == null ? "" : "." + plain.group(2))));
        }
        Matcher grouped = GROUPED.matcher(typed);
        if (grouped.matches()) {
            boolean isAmerican = grouped.group(1) != null;
            return Validated
                    .valid(new BigDecimal((isAmerican ? grouped.group(1) : grouped.group(3)).replaceAll("[.,]", "")
                            + "." + grouped.group(isAmerican ? 2 : 4)));
        }
        boolean isAmbiguous = typed.matches("\\d{1,3}(?:[.,]\\d{3})+");
        return Validated.invalid(new Problem(isAmbiguous ? Code.NOT_ALLOWED : Code.WRONG_TYPE,
                new Place("", 0, field), isAmbiguous
                        ? "\"" + text + "\" can be read as thousands or as decimals"
                        : "\"" + text + "\" is no number",
                isAmbiguous
                        ? "without a sign for thousands, or with two decimals: 1250, or 1.25"
                        : "a number, such as 12.50"));
    }
}
