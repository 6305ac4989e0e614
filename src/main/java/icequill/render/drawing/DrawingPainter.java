package icequill.render.drawing;

import icequill.render.drawing.Drawing.Line;
import icequill.render.drawing.Drawing.Outline;
import icequill.render.drawing.Drawing.Words;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.BaseFont;
import org.openpdf.text.pdf.PdfContentByte;

/**
 * Draws on a page. Texts are set in the page's own fonts.
 *
 * @param faces fonts that the page may use
 */
record DrawingPainter(PdfContentByte page, Faces faces) {

    /** Gives the font that can draw a text. */
    @FunctionalInterface
    interface Faces {
        BaseFont of(String text, boolean bold);
    }

    /** Fits the drawing into an area of the page, in points from the lower left corner. */
    void draw(Drawing drawing, Rectangle area) {
        float across = area.getWidth() / (float) drawing.view().getWidth();
        float down = area.getHeight() / (float) drawing.view().getHeight();
        page.saveState();
        page.concatCTM(across, 0, 0, -down, area.getLeft() - across * (float) drawing.view().getX(),
                area.getTop() + down * (float) drawing.view().getY());
        for (Drawing.Mark mark : drawing.marks()) {
            switch (mark) {
            case Outline outline -> draw(outline);
            case Words words -> draw(words);
            }
        }
        page.restoreState();
    }

    private void draw(Outline outline) {
        outline.fill().ifPresent(page::setColorFill);
        outline.line().ifPresent(this::take);
        if (outline.fill().isEmpty() && outline.line().isEmpty()) {
            return;
        }
        trace(outline.shape());
        if (outline.fill().isEmpty()) {
            page.stroke();
        } else if (outline.line().isEmpty()) {
            page.fill();
        } else {
            page.fillStroke();
        }
    }

    private void take(Line line) {
        page.setColorStroke(line.color());
        page.setLineWidth(line.width());
        float[] dashes = new float[line.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = line.dashes().get(i);
        }
        page.setLineDash(dashes, 0);
    }

    /** Shapes that are read from a page have straight and cubic parts only. */
    private void trace(Shape shape) {
        float[] to = new float[6];
        for (PathIterator each = shape.getPathIterator(null); !each.isDone(); each.next()) {
            switch (each.currentSegment(to)) {
            case PathIterator.SEG_MOVETO -> page.moveTo(to[0], to[1]);
            case PathIterator.SEG_LINETO -> page.lineTo(to[0], to[1]);
            case PathIterator.SEG_CUBICTO -> page.curveTo(to[0], to[1], to[2], to[3], to[4], to[5]);
            case PathIterator.SEG_CLOSE -> page.closePath();
            default -> throw new IllegalStateException("a part of a shape that no reader makes");
            }
        }
    }

    private void draw(Words words) {
        BaseFont font = faces.of(words.text(), words.bold());
        float width = font.getWidthPoint(words.text(), words.size());
        float left = switch (words.anchor()) {
        case START -> 0;
        case MIDDLE -> width / 2;
        case END -> width;
        };
        page.beginText();
        page.setColorFill(words.color());
        page.setFontAndSize(font, words.size());
        page.setTextMatrix(1, 0, 0, -1, (float) words.at().getX() - left, (float) words.at().getY());
        page.showText(words.text());
        page.endText();
    }
}
