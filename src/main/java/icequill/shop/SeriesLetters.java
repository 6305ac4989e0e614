package icequill.shop;

import icequill.explain.ConstantKey;
import icequill.files.form.BookSettings;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The letters that numbers of papers begin with, as shop.yaml sets them. */
record SeriesLetters(BookSettings settings) {

    /** Of the series that begins with the year's first paper of a kind; one that has begun keeps its letters. */
    Series series(PaperKind kind, int year) {
        return new Series(kind, of(kind), settings.office().orElse(""), year);
    }

    /** Letters that would not tell papers apart. Their form is the schema's. */
    List<Problem> problems() {
        Problems problems = new Problems();
        for (PaperKind kind : PaperKind.values()) {
            String letters = of(kind);
            Stream.of(PaperKind.values()).filter(other -> other.compareTo(kind) < 0 && of(other).equals(letters))
                    .forEach(other -> problems.add(Code.ALREADY_EXISTS, settings.lettersPlace(),
                            letters + " are the letters of " + ConstantKey.of(other) + " and of "
                                    + ConstantKey.of(kind),
                            "other letters for each kind of paper"));
            if (settings.letters().containsKey(ConstantKey.of(kind))
                    && settings.office().filter(letters.toLowerCase(Locale.ROOT)::equals).isPresent()) {
                problems.add(Code.NOT_ALLOWED, settings.lettersPlace(),
                        letters + " are the letters of " + ConstantKey.of(kind) + " and the mark of this office",
                        "letters that no office has as its mark");
            }
        }
        return problems.list();
    }

    private String of(PaperKind kind) {
        return settings.letters().getOrDefault(ConstantKey.of(kind), kind.usualLetters());
    }
}
