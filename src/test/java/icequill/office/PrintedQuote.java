package icequill.office;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** A quote as its customer has it on paper: only its text, read and worked out again with nothing of the program. */
public record PrintedQuote(String text) {

    private static final String NUMBER = "(\\d[\\d,]*(?:\\.\\d+)?)";
    private static final String AMOUNT = "(\\d[\\d,]*\\.\\d\\d)";
    private static final Pattern LINE = Pattern.compile(
            "^(.*?) (?:(\\d+) × )?" + NUMBER + "(?: (visit|min|fl oz))? " + NUMBER + "(/visit|/h|/fl oz| each) "
                    + NUMBER
                    + "$",
            Pattern.MULTILINE);
    private static final Pattern VISITS = Pattern
            .compile("^(?:This visit|Each of these (\\d+) visits) " + NUMBER + "$", Pattern.MULTILINE);
    private static final Pattern SUM = Pattern.compile("^All visits of the year (.*) " + NUMBER + "$",
            Pattern.MULTILINE);
    private static final Pattern LESS = Pattern.compile("^Less " + NUMBER + "% with the agreement −" + NUMBER + "$",
            Pattern.MULTILINE);
    /** A price of the shop's own: nobody can work it out. */
    private static final Pattern INCLUDED = Pattern.compile(
            "^Included calls \\d+ calls? included in a year, for " + NUMBER + " " + NUMBER + "$", Pattern.MULTILINE);
    private static final Pattern PRICE = Pattern.compile(
            "^Price of a year, before tax rounded to full steps of " + NUMBER + " " + NUMBER + "$", Pattern.MULTILINE);
    private static final List<String> PLANS = List.of("Semiannual plan", "Quarterly plan");
    private static final Pattern PAID = Pattern.compile("Paid [0-9,.×+ ]+");
    private static final Pattern PAYMENTS = Pattern.compile("(\\d+) × " + NUMBER);

    public static PrintedQuote of(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return new PrintedQuote(stripper.getText(document).replace('\u00a0', ' ').replaceAll(" +", " "));
        }
    }

    /** The text without its line breaks. */
    public String flowing() {
        return text.replaceAll("\\s+", " ");
    }

    /** A line with a quantity and a price. */
    record Line(String what, BigDecimal times, BigDecimal quantity, String per, BigDecimal price, BigDecimal amount) {

        /** Quantity times price, to the cent, as often as at so many machines; hours have sixty minutes. */
        BigDecimal worked() {
            BigDecimal product = quantity.multiply(price);
            return times.multiply(per.equals("/h")
                    ? product.divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP)
                    : product.setScale(2, RoundingMode.HALF_UP));
        }
    }

    /** Lines that are charged by quantity, as for every catch-up and visit. */
    List<Line> lines() {
        return LINE.matcher(text).results().map(found -> new Line(found.group(1),
                found.group(2) == null ? BigDecimal.ONE : number(found.group(2)), number(found.group(3)),
                found.group(6), number(found.group(5)), number(found.group(7)))).toList();
    }

    /** One plan's year: the visits' sums with how often they occur, and what follows from them. */
    record Year(List<BigDecimal> counts, List<BigDecimal> nets, List<BigDecimal> linesOfVisits, BigDecimal list,
            BigDecimal percent, BigDecimal less, BigDecimal included, BigDecimal step, BigDecimal price) {

        boolean visitsAddUp() {
            return nets.equals(linesOfVisits);
        }

        BigDecimal workedList() {
            BigDecimal sum = BigDecimal.ZERO;
            for (int i = 0; i < nets.size(); i++) {
                sum = sum.add(counts.get(i).multiply(nets.get(i)));
            }
            return sum;
        }

        BigDecimal workedPrice() {
            BigDecimal off = list.multiply(percent).divide(BigDecimal.valueOf(100), 2, RoundingMode.HALF_UP);
            return off.compareTo(less) == 0
                    ? list.subtract(off).add(included).divide(step, 0, RoundingMode.HALF_UP).multiply(step)
                    : BigDecimal.ZERO;
        }
    }

    List<Year> years() {
        List<Year> years = new ArrayList<>();
        String[] parts = text.substring(text.indexOf("Annex: ")).split("(?m)^\\S+ \\(USD\\)$", -1);
        for (String part : Arrays.asList(parts).subList(1, parts.length)) {
            List<MatchResult> visits = VISITS.matcher(part).results().toList();
            MatchResult sum = first(SUM, part);
            MatchResult less = first(LESS, part);
            MatchResult price = first(PRICE, part);
            years.add(new Year(
                    visits.stream().map(found -> found.group(1) == null ? BigDecimal.ONE : number(found.group(1)))
                            .toList(),
                    visits.stream().map(found -> number(found.group(2))).toList(), linesOf(part, visits),
                    number(sum.group(2)), number(less.group(1)), number(less.group(2)),
                    INCLUDED.matcher(part).results().findFirst().map(found -> number(found.group(2)))
                            .orElse(BigDecimal.ZERO),
                    number(price.group(1)),
                    number(price.group(2))));
        }
        return years;
    }

    /** The sums of the lines that stand before each visit's sum. */
    private static List<BigDecimal> linesOf(String part, List<MatchResult> visits) {
        List<BigDecimal> sums = new ArrayList<>();
        int from = 0;
        for (MatchResult visit : visits) {
            sums.add(LINE.matcher(part.substring(from, visit.start())).results()
                    .map(found -> number(found.group(7))).reduce(BigDecimal.ZERO, BigDecimal::add));
            from = visit.end();
        }
        return sums;
    }

    /** The amounts of a row of the table of choices: a year, the first year where it differs, tax, with tax. */
    List<String> choice(String name) {
        String rest = text.substring(text.indexOf(name));
        Matcher numbers = Pattern.compile(AMOUNT + "(?: " + AMOUNT + ")?(?: " + AMOUNT + ") " + AMOUNT).matcher(rest);
        return numbers.find()
                ? IntStream.rangeClosed(1, numbers.groupCount()).mapToObj(numbers::group).filter(Objects::nonNull)
                        .toList()
                : List.of();
    }

    /** The prices of the plans in the table of choices. */
    List<BigDecimal> planPrices() {
        return PLANS.stream().map(name -> number(choice(name).getFirst())).toList();
    }

    /** What the payments of each plan in the table of choices come to. */
    List<BigDecimal> paymentSums() {
        return PLANS.stream().map(name -> PAID.matcher(flowing().substring(flowing().indexOf(name))).results()
                .findFirst().orElseThrow().group())
                .map(paid -> PAYMENTS.matcher(paid).results()
                        .map(found -> number(found.group(1)).multiply(number(found.group(2))))
                        .reduce(BigDecimal.ZERO, BigDecimal::add))
                .toList();
    }

    private static MatchResult first(Pattern pattern, String text) {
        return pattern.matcher(text).results().findFirst()
                .orElseThrow(() -> new AssertionError("not printed: " + pattern));
    }

    private static BigDecimal number(String printed) {
        return new BigDecimal(printed.replace(",", ""));
    }
}
