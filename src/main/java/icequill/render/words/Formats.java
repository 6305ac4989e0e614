package icequill.render.words;

import icequill.money.Exact;
import icequill.party.Language;
import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Set;
import javax.money.MonetaryAmount;

/**
 * How numbers, days and times are written. Decimal signs go by language and country together, the order of a date and the
 * clock by country, since a Spanish paper in the United States writes 1,250.00 and a Spanish one in Spain 1.250,00. The
 * separators are those of the Unicode CLDR in the runtime; month names are our own words, so that no runtime changes a paper.
 *
 * @param country ISO 3166-1 alpha-2 of the shop
 */
public record Formats(Language language, String country, Words words) {

    /** Countries that write the year first (Unicode CLDR, from memory). */
    private static final Set<String> YEAR_FIRST = Set.of("CN", "HU", "JP", "KR", "LT", "TW");
    /** Countries that write the month before the day in English (Unicode CLDR, from memory). */
    private static final Set<String> MONTH_FIRST = Set.of("CA", "PH", "US");
    /** Countries that count hours to twelve (Unicode CLDR, from memory). */
    private static final Set<String> TWELVE_HOURS = Set.of("AU", "CA", "CO", "EG", "IN", "KR", "KW", "MX", "NZ", "PH",
            "SA",
            "US");
    private static final int NOON = 12;

    static Formats of(Language language, String country) {
        return new Formats(language, country, Words.of(language));
    }

    /** The number of an amount with its currency's decimals, without sign of currency. */
    public String amount(MonetaryAmount amount) {
        BigDecimal number = Exact.normal(amount.getNumber().numberValueExact(BigDecimal.class));
        return number(number, Math.max(amount.getCurrency().getDefaultFractionDigits(), number.scale()));
    }

    /** The same after the code of its currency, where nothing else says which it is. */
    public String amountInCurrency(MonetaryAmount amount) {
        return amount.getCurrency().getCurrencyCode() + " " + amount(amount);
    }

    /** With as many decimals as the number has. */
    public String number(BigDecimal number) {
        BigDecimal normal = Exact.normal(number);
        return number(normal, normal.scale());
    }

    /** With exactly so many decimals, which must be enough. */
    public String number(BigDecimal number, int decimals) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.of(language.tag(), country));
        symbols.setMinusSign('−');
        if (Character.isSpaceChar(symbols.getGroupingSeparator())) {
            symbols.setGroupingSeparator('\u00a0');
        }
        DecimalFormat format = new DecimalFormat("#,##0", symbols);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(number);
    }

    /** A percentage, its sign as the language spells it: at once in English, after a space in Spanish. */
    public String percent(BigDecimal number) {
        return words.text("percent").replace("{0}", number(number));
    }

    public String day(LocalDate day) {
        return YEAR_FIRST.contains(country)
                ? day.toString()
                : new DateForms(words).written(day, MONTH_FIRST.contains(country));
    }

    /** In which order a day and a month in figures are meant: by the country, if this language has the same order there. */
    public DayOrder dayOrder() {
        String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(FormatStyle.SHORT, null,
                IsoChronology.INSTANCE, Locale.of(language.tag(), country));
        boolean isMonthFirst = MONTH_FIRST.contains(country);
        return switch (pattern.charAt(0)) {
        case 'd' -> isMonthFirst || YEAR_FIRST.contains(country) ? DayOrder.UNCLEAR : DayOrder.DAY_FIRST;
        case 'M' -> isMonthFirst ? DayOrder.MONTH_FIRST : DayOrder.UNCLEAR;
        default -> DayOrder.UNCLEAR;
        };
    }

    /** The same with the day of the week before it. */
    public String dayOfWeek(LocalDate day) {
        return day.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.of(language.tag(), country)) + ", " + day(day);
    }

    /** From a time to another one; the half of the day is said once where it is the same. */
    public String span(LocalTime from, LocalTime until) {
        String whole = time(from);
        int half = whole.indexOf('\u00a0');
        boolean once = half > 0 && (from.getHour() < NOON) == (until.getHour() < NOON);
        return (once ? whole.substring(0, half) : whole) + " – " + time(until);
    }

    public String time(LocalTime time) {
        if (!TWELVE_HOURS.contains(country)) {
            return time.toString().substring(0, "00:00".length());
        }
        int hour = time.getHour() % NOON == 0 ? NOON : time.getHour() % NOON;
        return hour + time.toString().substring(2, "00:00".length()) + "\u00a0"
                + words.text(time.getHour() < NOON ? "time.am" : "time.pm");
    }
}
