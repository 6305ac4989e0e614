package icequill.render.pdf;

import org.openpdf.text.Rectangle;
import org.openpdf.text.pdf.PdfAction;
import org.openpdf.text.pdf.PdfAnnotation;
import org.openpdf.text.pdf.PdfBorderArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

/** The part of a page that can be clicked to follow a link. */
final class LinkArea {

    private LinkArea() {
    }

    /**
     * Puts it on the page that is being written.
     *
     * @param key of the link's structure element
     * @return what the structure element refers to it by
     */
    static PdfDictionary on(PdfWriter writer, LinkTarget link, Rectangle area, int key) {
        PdfAnnotation annotation = new PdfAnnotation(writer, area.getLeft(), area.getBottom(), area.getRight(),
                area.getTop(), new PdfAction(link.address()));
        annotation.put(PdfName.SUBTYPE, PdfName.LINK);
        annotation.put(PdfName.F, new PdfNumber(PdfAnnotation.FLAGS_PRINT));
        annotation.put(PdfName.CONTENTS, new PdfString(link.text(), PdfString.TEXT_UNICODE));
        annotation.put(PdfName.STRUCTPARENT, new PdfNumber(key));
        annotation.setBorder(new PdfBorderArray(0, 0, 0));
        writer.addAnnotation(annotation);
        PdfDictionary reference = new PdfDictionary(new PdfName("OBJR"));
        reference.put(new PdfName("Obj"), annotation.getIndirectReference());
        reference.put(PdfName.PG, writer.getCurrentPage());
        return reference;
    }
}
