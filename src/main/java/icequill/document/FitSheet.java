package icequill.document;

import icequill.explain.Phrase;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the shop's own records say of how soon dirt stops machines, for the owner.
 *
 * @param table the name of the table that the records stood in; empty where they are those of the book
 * @param notes how the table was read
 * @param settings lines to put into pricing/forecast.yaml; empty where the owner's settings stay
 */
public record FitSheet(LocalDate date, Shop shop, Language language, PaperSize size, Optional<String> table,
        List<Plot> plots,
        List<Phrase> notes, List<String> settings) implements Paper {

    /**
     * One side, at one kind of site or at all.
     *
     * @param title side and kind of site
     * @param said what was found, sentence by sentence
     * @param points of the records, by rising months; empty where nothing was fitted
     * @param curve of the fitted clock, by rising months
     */
    public record Plot(Phrase title, List<Phrase> said, List<Point> points, List<Point> curve) {
        public Plot {
            said = List.copyOf(said);
            points = List.copyOf(points);
            curve = List.copyOf(curve);
        }
    }

    /**
     * A point of a plot.
     *
     * @param stopped of twenty machines, how many have stopped by then
     */
    public record Point(BigDecimal months, BigDecimal stopped) {}

    public FitSheet {
        plots = List.copyOf(plots);
        notes = List.copyOf(notes);
        settings = List.copyOf(settings);
    }
}
