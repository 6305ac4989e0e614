package icequill.render.pdf;

import icequill.render.words.Fonts;
import icequill.render.words.Shaping;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextFontContext;
import org.xhtmlrenderer.pdf.ITextTextRenderer;

/** Measures shaped texts as they are drawn; all others as the renderer does. */
final class ShapedWidths extends ITextTextRenderer {

    @Override
    public int getWidth(ITextFontContext context, ITextFSFont font, String text) {
        return Fonts.isShaped(font.getFontDescription().getFont())
                ? (int) Math.ceil(Shaping.width(text, font.getSize2D()))
                : super.getWidth(context, font, text);
    }
}
