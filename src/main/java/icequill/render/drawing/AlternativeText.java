package icequill.render.drawing;

import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfRectangle;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfStructureElement;
import org.w3c.dom.Element;

/** What those who cannot see a picture are told of it. */
public final class AlternativeText {

    private AlternativeText() {
    }

    /** The picture in words; empty for mere decoration. */
    public static String words(Element element) {
        return element.getAttribute(element.getNodeName().equals(Drawings.ELEMENT) ? "aria-label" : "alt");
    }

    /**
     * The text of a drawing that stands somewhere on a page.
     *
     * @param area on its page, in points from the lower left corner
     */
    public static void describe(PdfStructureElement figure, String text, Rectangle area) {
        figure.put(PdfName.ALT, new PdfString(text, PdfString.TEXT_UNICODE));
        PdfDictionary layout = new PdfDictionary();
        layout.put(PdfName.O, new PdfName("Layout"));
        layout.put(new PdfName("Placement"), new PdfName("Block"));
        layout.put(PdfName.BBOX, new PdfRectangle(area));
        figure.put(PdfName.A, layout);
    }
}
