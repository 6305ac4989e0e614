package icequill.ledger.find;

import icequill.money.Amounts;
import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Cuts texts into the words that papers are found by: lower case, without accents and punctuation. A text in one piece such as
 * {@code PO-47/11} is found whole ({@code po4711}), without what stands before many numbers ({@code 4711}), and by its parts.
 */
public final class FindWords {

    /** Stand before so many numbers that they tell nothing. */
    private static final Set<String> NOISE = Set.of("po", "no", "nr", "sn");
    private static final Pattern BEFORE_NUMBER = Pattern.compile("^(?:" + String.join("|", NOISE) + ")(?=\\p{N})");
    private static final Pattern BLANKS = Pattern.compile("[\\s;]+");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern AMOUNT = Pattern.compile("\\d{1,3}(?:,?\\d{3})*\\.\\d{2,3}");
    private static final int LONGEST = 60;

    private FindWords() {
    }

    /** The words of where a paper went: customer, store and address, a line each. */
    public static Set<String> ofWhereabouts(String text) {
        return wholesAndParts(text).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The words that belong to one paper. */
    public static Set<String> ofPaper(String number, int position, SearchKeys facts) {
        Stream<String> names = Stream.concat(facts.purchaseOrder().stream(), facts.serials().stream())
                .flatMap(FindWords::wholesAndParts);
        Stream<String> exact = Stream.of(whole(number), String.valueOf(position), whole(lastPart(number)));
        Stream<String> amounts = facts.amounts().stream().map(Amounts::plain);
        Stream<String> days = facts.days().stream().map(day -> whole(day.toString()));
        return Stream.of(names, exact, amounts, days).flatMap(words -> words)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The words of a question, each once. */
    public static List<String> ofQuestion(String text) {
        return BLANKS.splitAsStream(text).map(FindWords::asked).filter(FindWords::tells).distinct().toList();
    }

    private static String asked(String piece) {
        return AMOUNT.matcher(piece).matches() ? piece.replace(",", "") : whole(piece);
    }

    private static Stream<String> wholesAndParts(String text) {
        return BLANKS.splitAsStream(text)
                .flatMap(piece -> Stream.concat(
                        Stream.of(whole(piece), BEFORE_NUMBER.matcher(whole(piece)).replaceFirst("")),
                        BETWEEN.splitAsStream(plain(piece)).map(FindWords::cut)))
                .filter(FindWords::tells);
    }

    private static String whole(String piece) {
        return cut(BETWEEN.matcher(plain(piece)).replaceAll(""));
    }

    /** As names are compared, however somebody writes them: lower case, without accents. */
    public static String plain(String text) {
        return MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("").toLowerCase(Locale.ROOT);
    }

    private static String cut(String word) {
        return word.length() <= LONGEST ? word : word.substring(0, LONGEST);
    }

    private static boolean tells(String word) {
        return !word.isEmpty() && !NOISE.contains(word);
    }

    private static String lastPart(String number) {
        return Optional.of(number.lastIndexOf('-')).map(dash -> number.substring(dash + 1)).orElseThrow();
    }
}
