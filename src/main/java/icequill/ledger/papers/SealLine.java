package icequill.ledger.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The newest seals of all series as one line to print, mail or keep elsewhere: how far each series has come, and one hash over their
 * seals. Whoever has it can tell at any later time whether a paper up to there was changed.
 *
 * @param papers the number of the last paper of each series
 * @param hash over their seals, in that order
 */
public record SealLine(List<String> papers, String hash) {

    private static final String BEGIN = "icequill-seal";
    private static final Pattern FORM = Pattern
            .compile(BEGIN + "((?: [A-Z]{2,3}(?:-[a-z0-9]{1,12})?-[0-9]{4}-[0-9]{5,10})+) ([0-9a-f]{64})");

    public SealLine {
        papers = List.copyOf(papers);
    }

    /** Of a book as it stands. */
    public static SealLine of(List<SeriesHead> heads) {
        List<SeriesHead> begun = heads.stream().filter(head -> head.papers() > 0).toList();
        return new SealLine(begun.stream().map(head -> head.series().number(head.papers())).toList(),
                hash(begun.stream().map(SeriesHead::seal).toList()));
    }

    /** The first such line within a text. */
    public static Optional<SealLine> in(String text) {
        Matcher form = FORM.matcher(text.replaceAll("\\s+", " "));
        return form.find()
                ? Optional.of(new SealLine(List.of(form.group(1).strip().split(" ", -1)), form.group(2)))
                : Optional.empty();
    }

    /** Whether these are the seals of its papers. */
    public boolean fits(List<String> seals) {
        return hash.equals(hash(seals));
    }

    public String text() {
        return BEGIN + " " + String.join(" ", papers) + " " + hash;
    }

    private static String hash(List<String> seals) {
        return Seal.of(new ArrayList<>(seals));
    }
}
