package icequill.render.drawing;

import icequill.render.page.Texts;
import java.util.List;

/**
 * A drawing as {@code parts/drawing.ftlh} writes it.
 *
 * @param text for those who do not see it
 * @param box the part of the plane that is seen, as SVG writes it
 * @param width on paper, with its unit
 * @param height on paper, with its unit
 */
public record Drawn(String text, String box, String width, String height, List<Outline> parts, List<Word> words)
        implements
        Texts {

    /**
     * A line or an area.
     *
     * @param d its steps, as SVG writes them
     * @param line how thick it is
     */
    public record Outline(String d, String fill, String stroke, String line) implements Texts {}

    /**
     * A line of text.
     *
     * @param anchor which of its points is given, on the base line
     */
    public record Word(String text, String x, String y, String anchor, String size) implements Texts {}

    public Drawn {
        parts = List.copyOf(parts);
        words = List.copyOf(words);
    }
}
