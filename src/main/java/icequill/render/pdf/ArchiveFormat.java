package icequill.render.pdf;

import icequill.document.Attachment;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.openpdf.text.pdf.PdfBoolean;
import org.openpdf.text.pdf.PdfDate;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;
import org.w3c.dom.Document;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * Makes the file one that archives keep (PDF/A-3a, ISO 19005-3) and screen readers read (PDF/UA-1, ISO 14289-1): metadata that
 * agree with the document's information, language and structure, a color profile, and dates of the paper instead of the moment
 * of printing.
 */
final class ArchiveFormat extends DefaultPDFCreationListener {

    private static final String COLORS = "sRGB IEC61966-2.1";

    private final Document page;
    private final TaggedDevice device;
    private final LocalDate date;
    private final List<Attachment> attachments;
    private final Map<String, String> marks;

    ArchiveFormat(Document page, TaggedDevice device, LocalDate date, List<Attachment> attachments,
            Map<String, String> marks) {
        this.page = page;
        this.device = device;
        this.date = date;
        this.attachments = attachments;
        this.marks = Map.copyOf(marks);
    }

    @Override
    public void preOpen(ITextRenderer renderer) {
        PdfWriter writer = writer(renderer);
        writer.setTagged();
        writer.setTabs(PdfName.S);
        writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
        writer.getExtraCatalog().put(PdfName.LANG, new PdfString(page.getDocumentElement().getAttribute("lang")));
    }

    @Override
    public void onClose(ITextRenderer renderer) {
        PdfWriter writer = writer(renderer);
        String title = page.getElementsByTagName("title").item(0).getTextContent().strip();
        PdfDate day = new PdfDate(GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC)));
        PdfDictionary info = writer.getInfo();
        info.put(PdfName.TITLE, new PdfString(title, PdfString.TEXT_UNICODE));
        info.put(PdfName.CREATIONDATE, day);
        info.put(PdfName.MODDATE, day);
        String producer = String.valueOf(info.get(PdfName.PRODUCER));
        writer.setXmpMetadata(Metadata.packet(title, producer, day.getW3CDate(),
                attachments.stream().anyMatch(Attachment::isHybrid), marks));
        try {
            EmbeddedFiles.add(attachments, day, writer);
            ICC_Profile profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
            writer.setOutputIntents(COLORS, "", "http://www.color.org", COLORS, profile);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        device.tree().close(page.getDocumentElement());
    }

    private static PdfWriter writer(ITextRenderer renderer) {
        return Objects.requireNonNull(renderer.getWriter(), "not writing");
    }
}
