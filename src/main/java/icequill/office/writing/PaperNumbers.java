package icequill.office.writing;

import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds papers by numbers as people type them. */
public final class PaperNumbers {

    private static final Pattern TYPED = Pattern
            .compile("([a-z]{1,6})[- ]?(?:([a-z0-9]{1,12})-)?([0-9]{4})[- /]0*([0-9]{1,7})");
    private static final Pattern SHORT = Pattern.compile("([0-9]{4})[- /]0*([0-9]{1,7})");

    /** What else a paper is found by. */
    public static final String FIND = "icequill find, by customer, store, address, purchase order, serial, amount or date";

    private static final String PDF = ".pdf";

    private static final Pattern COUNT = Pattern.compile("[0-9]{1,7}");

    private PaperNumbers() {
    }

    /** The paper that somebody names: by its number, however it is typed, or by its PDF. */
    public static Validated<IssuedPaper> find(Reading book, String named) {
        return find(book, named, EnumSet.allOf(PaperKind.class));
    }

    /**
     * The same where papers of some kinds are asked for.
     *
     * @param kinds what a number may mean that does not say its kind; one in full is found whatever it is of
     */
    public static Validated<IssuedPaper> find(Reading book, String named, Set<PaperKind> kinds) {
        String number = number(named);
        Optional<IssuedPaper> exact = book.papers().show(number).found();
        if (exact.isPresent()) {
            return Validated.valid(exact.get());
        }
        List<IssuedPaper> meant = meant(book, number).stream().filter(paper -> kinds.contains(paper.series().kind()))
                .toList();
        return meant.size() == 1
                ? Validated.valid(meant.getFirst())
                : Validated.invalid(meant.isEmpty()
                        ? new Problem(Code.UNKNOWN_NAME, Place.NOWHERE, "no paper \"" + number + "\" was issued", FIND)
                        : severalMeant(number, meant));
    }

    /** What is said of a number that several papers have. */
    public static Problem severalMeant(String number, List<IssuedPaper> meant) {
        return new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "\"" + number + "\" may be several papers",
                "one of: " + meant.stream().map(IssuedPaper::number).collect(Collectors.joining(", ")));
    }

    /** A PDF is called after its paper. */
    private static String number(String named) {
        return named.endsWith(PDF)
                ? named.substring(Math.max(named.lastIndexOf('/'), named.lastIndexOf('\\')) + 1,
                        named.length() - PDF.length())
                : named;
    }

    /** What a number may mean that is typed in another way than it is printed; one without a kind and a year, any paper that has it. */
    public static List<IssuedPaper> meant(Reading book, String number) {
        String typed = number(number).strip().toLowerCase(Locale.ROOT);
        return COUNT.matcher(typed).matches()
                ? book.papers().at(Integer.parseInt(typed))
                : written(book, typed);
    }

    /** The whole number of one that is typed with letters, office and year; an invoice's where only the year is given. */
    private static List<IssuedPaper> written(Reading book, String typed) {
        Matcher whole = TYPED.matcher(typed);
        if (whole.matches()) {
            String office = whole.group(2) == null ? "" : "-" + whole.group(2);
            String series = whole.group(1).toUpperCase(Locale.ROOT) + office + "-" + whole.group(3);
            return book.papers().show(Series.number(series, Integer.parseInt(whole.group(4)))).found().stream()
                    .toList();
        }
        Matcher part = SHORT.matcher(typed);
        return part.matches()
                ? book.papers().at(Integer.parseInt(part.group(2))).stream()
                        .filter(paper -> paper.series().kind() == PaperKind.INVOICE
                                && String.valueOf(paper.series().year()).equals(part.group(1)))
                        .toList()
                : List.of();
    }
}
