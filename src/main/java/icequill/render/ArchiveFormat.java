package icequill.render;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.Objects;
import org.openpdf.text.pdf.PdfDate;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;

/**
 * Makes the file one that archives keep (PDF/A-3b, ISO 19005-3): metadata that agree with the document's information, a color
 * profile, and dates of the paper instead of the moment of printing.
 */
final class ArchiveFormat extends DefaultPDFCreationListener {

    private static final String COLORS = "sRGB IEC61966-2.1";

    private final String title;
    private final LocalDate date;

    ArchiveFormat(String title, LocalDate date) {
        this.title = title;
        this.date = date;
    }

    @Override
    public void onClose(ITextRenderer renderer) {
        PdfWriter writer = Objects.requireNonNull(renderer.getWriter(), "not writing");
        PdfDate day = new PdfDate(GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC)));
        PdfDictionary info = writer.getInfo();
        info.put(PdfName.TITLE, new PdfString(title, PdfString.TEXT_UNICODE));
        info.put(PdfName.CREATIONDATE, day);
        info.put(PdfName.MODDATE, day);
        String producer = String.valueOf(info.get(PdfName.PRODUCER));
        writer.setXmpMetadata(Metadata.packet(title, producer, day.getW3CDate()));
        try {
            ICC_Profile profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB);
            writer.setOutputIntents(COLORS, "", "http://www.color.org", COLORS, profile);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
