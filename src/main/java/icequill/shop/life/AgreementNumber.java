package icequill.shop.life;

import icequill.ledger.Reading;
import icequill.ledger.entries.AgreementEntry;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds what to call agreements that nobody numbered. */
public final class AgreementNumber {

    private static final int MOST = 999_999;

    private AgreementNumber() {
    }

    /** The next after those of a year that are made in the same way. */
    public static String free(Reading open, int year) {
        Pattern made = Pattern.compile("A-" + year + "-0*([0-9]{1,6})");
        int last = open.entries().agreements().stream().map(AgreementEntry::number).map(made::matcher)
                .filter(Matcher::matches).mapToInt(matcher -> Integer.parseInt(matcher.group(1)))
                .filter(count -> count < MOST).max().orElse(0);
        return String.format(Locale.ROOT, "A-%d-%03d", year, last + 1);
    }
}
