package icequill.document;

import icequill.explain.Phrase;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.problem.Check;
import java.time.LocalDate;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * What a comparison says to the owner: exact figures, what she earns, and which guess moves the answer most. It never leaves the
 * shop.
 *
 * @param heads of the ways of care, one for each value of a line
 * @param interval the cheapest cleaning interval beside what hygiene allows
 * @param plan whose answer the swings are about
 * @param base by how much it is expected to be cheaper in the first year than paying per call; negative where it is dearer
 * @param swings the widest first
 */
public record OwnersOutlook(LocalDate date, Shop shop, Language language, PaperSize size, String customer,
        Where where, List<Phrase> heads, List<Line> lines, List<Phrase> interval, Phrase plan, MonetaryAmount base,
        List<Swing> swings, List<Phrase> notes) implements Paper {

    /** A figure of each way; a value may be empty text. */
    public record Line(Phrase label, List<Phrase> values) {
        public Line {
            values = List.copyOf(values);
        }
    }

    /**
     * A guess that may be off.
     *
     * @param what with its two figures
     * @param low the answer at the careful figure
     * @param high the answer at the gloomy one
     */
    public record Swing(Phrase what, MonetaryAmount low, MonetaryAmount high) {}

    public OwnersOutlook {
        heads = List.copyOf(heads);
        lines = List.copyOf(lines);
        interval = List.copyOf(interval);
        swings = List.copyOf(swings);
        notes = List.copyOf(notes);
        for (Line line : lines) {
            Check.that(line.values().size() == heads.size(), "values of " + line.label());
        }
    }
}
