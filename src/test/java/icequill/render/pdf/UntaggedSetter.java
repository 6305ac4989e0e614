package icequill.render.pdf;

import icequill.render.words.Fonts;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.openpdf.text.pdf.PdfWriter;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xml.sax.InputSource;

/** The yardstick for what tags cost: the same page, fonts and fixed ids, and nothing said of what is what. */
public final class UntaggedSetter {

    private UntaggedSetter() {
    }

    public static byte[] set(Html html) throws Exception {
        ITextOutputDevice device = new ITextOutputDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT);
        ITextRenderer renderer = new ITextRenderer(ITextRenderer.DEFAULT_DOTS_PER_POINT,
                ITextRenderer.DEFAULT_DOTS_PER_PIXEL, device, new ShopImages(Path.of("no-such-shop"), device),
                Fonts.resolver(Set.of()));
        String page = html.text().replaceFirst("<!DOCTYPE html>", "");
        renderer.setDocument(
                DocumentBuilderFactory.newInstance().newDocumentBuilder()
                        .parse(new InputSource(new StringReader(page))));
        renderer.setCompressionEnabled(false);
        renderer.setPDFXConformance(PdfWriter.PDFA3B);
        renderer.layout();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        renderer.createPDF(bytes);
        return FixedIds.in(bytes.toByteArray());
    }
}
