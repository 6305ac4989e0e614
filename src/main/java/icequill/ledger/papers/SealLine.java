package icequill.ledger.papers;

import icequill.ledger.store.Seal;
import icequill.ledger.trail.TrailHead;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The newest seals of all series and of the trail as one line to print, mail or keep elsewhere: how far each has come, and one hash
 * over their seals. Whoever has it can tell at any later time whether a paper or a row of the trail up to there was changed.
 *
 * @param papers the number of the last paper of each series, and the name of the trail's last row
 * @param hash over their seals, in that order
 */
public record SealLine(List<String> papers, String hash) {

    private static final String BEGIN = "icequill-seal";
    private static final Pattern FORM = Pattern
            .compile(BEGIN
                    + "((?: " + Series.FORM + "-[0-9]{5,10}| trail-[0-9]{1,18})+) ([0-9a-f]{64})");

    public SealLine {
        papers = List.copyOf(papers);
    }

    /** Of a book as it stands. */
    public static SealLine of(List<SeriesHead> heads, TrailHead trail) {
        List<SeriesHead> begun = heads.stream().filter(head -> head.papers() > 0).toList();
        Optional<TrailHead> kept = Optional.of(trail).filter(head -> head.rows() > 0);
        return new SealLine(
                Stream.concat(begun.stream().map(head -> head.series().number(head.papers())),
                        kept.stream().map(TrailHead::name)).toList(),
                hash(Stream.concat(begun.stream().map(SeriesHead::seal), kept.stream().map(TrailHead::seal))
                        .toList()));
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
