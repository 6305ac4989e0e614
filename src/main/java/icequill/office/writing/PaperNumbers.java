package icequill.office.writing;

import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds papers by numbers as people type them. */
public final class PaperNumbers {

    private static final Pattern TYPED = Pattern
            .compile("([a-z]{1,6})[- ]?(?:([a-z0-9]{1,12})-)?([0-9]{4})[- /]0*([0-9]{1,7})");
    private static final Pattern SHORT = Pattern.compile("([0-9]{4})[- /]0*([0-9]{1,7})");

    private static final Pattern COUNT = Pattern.compile("[0-9]{1,7}");

    private PaperNumbers() {
    }

    /** The paper of that number; a problem names the one that was most likely meant. */
    public static Validated<IssuedPaper> find(Reading book, String number) {
        return book.papers().show(number).found().map(Validated::valid)
                .orElseGet(() -> Validated.invalid(new Problem(Code.UNKNOWN_NAME, Place.NOWHERE,
                        "no paper \"" + number + "\" was issued", meant(book, number).stream().findFirst()
                                .map(near -> "did you mean " + near.number() + "?")
                                .orElse("icequill find, by customer, store, address, purchase order, serial, amount or date"))));
    }

    /** What a number may mean that is typed in another way than it is printed; one without a kind and a year, any paper that has it. */
    public static List<IssuedPaper> meant(Reading book, String number) {
        String typed = number.strip().toLowerCase(Locale.ROOT);
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
