package icequill.render.drawing;

import icequill.render.drawing.Drawing.Line;
import icequill.render.drawing.Drawing.Outline;
import icequill.render.drawing.Drawing.Words;
import icequill.render.words.Family;
import icequill.render.words.FontRun;
import icequill.render.words.Shaping;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.List;
import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.BaseFont;
import org.openpdf.text.pdf.PdfContentByte;

/**
 * Draws on a page. Texts are set in the page's own fonts.
 *
 * @param faces fonts that the page may use
 */
record DrawingPainter(PdfContentByte page, Faces faces) {

    /** Gives a font of a family. */
    @FunctionalInterface
    interface Faces {
        BaseFont of(Family family, boolean bold);
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

    private void trace(Shape shape) {
        float[] to = new float[6];
        for (PathIterator each = shape.getPathIterator(null); !each.isDone(); each.next()) {
            switch (each.currentSegment(to)) {
            case PathIterator.SEG_MOVETO -> page.moveTo(to[0], to[1]);
            case PathIterator.SEG_LINETO -> page.lineTo(to[0], to[1]);
            case PathIterator.SEG_CUBICTO -> page.curveTo(to[0], to[1], to[2], to[3], to[4], to[5]);
            case PathIterator.SEG_QUADTO -> page.curveTo(to[0], to[1], to[2], to[3]);
            case PathIterator.SEG_CLOSE -> page.closePath();
            default -> throw new IllegalStateException("a part of a shape that there is not");
            }
        }
    }

    private void draw(Words words) {
        List<FontRun> runs = FontRun.of(words.text());
        float width = (float) runs.stream().mapToDouble(run -> width(run, words)).sum();
        float at = (float) words.at().getX() - switch (words.anchor()) {
        case START -> 0;
        case MIDDLE -> width / 2;
        case END -> width;
        };
        page.setColorFill(words.color());
        for (FontRun run : runs) {
            if (run.family() == Family.SHAPED) {
                trace(AffineTransform.getTranslateInstance(at, words.at().getY())
                        .createTransformedShape(Shaping.outline(run.text(), words.size())));
                page.fill();
            } else {
                show(run, words, at);
            }
            at += width(run, words);
        }
    }

    private void show(FontRun run, Words words, float at) {
        page.beginText();
        page.setFontAndSize(faces.of(run.family(), words.bold()), words.size());
        page.setTextMatrix(1, 0, 0, -1, at, (float) words.at().getY());
        page.showText(run.text());
        page.endText();
    }

    private float width(FontRun run, Words words) {
        return run.family() == Family.SHAPED
                ? Shaping.width(run.text(), words.size())
                : faces.of(run.family(), words.bold()).getWidthPoint(run.text(), words.size());
    }
}
