package icequill.render.words;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.List;

/**
 * Scripts whose letters join, stack or change places, or that run from right to left. Java shapes them; they are drawn as outlines, and
 * the text itself lies behind them to be read and copied, since a PDF names single characters for glyphs only.
 */
public final class Shaping {

    /** Outlines are made in this size, and scaled. */
    private static final float UNITS = 1000;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final Font FONT = font();

    /** What runs in one direction, in the order in which it stands on the line. */
    private record Piece(int start, int end, boolean rightToLeft) {}

    private Shaping() {
    }

    /** How wide a text is, in the unit of its size. */
    public static float width(String text, float size) {
        return (float) set(text, new Path2D.Float()) * size / UNITS;
    }

    /** Its outline from its left end on the line it stands on, downward counted positive. */
    public static Shape outline(String text, float size) {
        Path2D outline = new Path2D.Float();
        set(text, outline);
        outline.transform(AffineTransform.getScaleInstance(size / UNITS, size / UNITS));
        return outline;
    }

    /** Its characters from left to right, as they stand on the line. */
    public static String visual(String text) {
        StringBuilder visual = new StringBuilder();
        for (Piece piece : pieces(text)) {
            String part = text.substring(piece.start(), piece.end());
            visual.append(piece.rightToLeft() ? new StringBuilder(part).reverse() : part);
        }
        return visual.toString();
    }

    private static double set(String text, Path2D outline) {
        char[] letters = text.toCharArray();
        double at = 0;
        for (Piece piece : pieces(text)) {
            GlyphVector glyphs = FONT.layoutGlyphVector(EXACT, letters, piece.start(), piece.end(),
                    piece.rightToLeft() ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT);
            outline.append(glyphs.getOutline((float) at, 0), false);
            at += glyphs.getGlyphPosition(glyphs.getNumGlyphs()).getX();
        }
        return at;
    }

    private static List<Piece> pieces(String text) {
        if (text.isEmpty()) {
            return List.of();
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        Piece[] pieces = new Piece[runs];
        for (int i = 0; i < runs; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            pieces[i] = new Piece(bidi.getRunStart(i), bidi.getRunLimit(i), bidi.getRunLevel(i) % 2 == 1);
        }
        Bidi.reorderVisually(levels, 0, pieces, 0, runs);
        return List.of(pieces);
    }

    private static Font font() {
        String file = Family.SHAPED.files().getFirst();
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(Fonts.read(file))).deriveFont(UNITS);
        } catch (IOException broken) {
            throw new UncheckedIOException(file, broken);
        } catch (FontFormatException broken) {
            throw new IllegalStateException(file, broken);
        }
    }
}
