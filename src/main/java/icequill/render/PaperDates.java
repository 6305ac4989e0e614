package icequill.render;

import java.time.LocalDate;
import java.util.GregorianCalendar;
import java.util.Objects;
import java.util.TimeZone;
import org.openpdf.text.pdf.PdfDate;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.xhtmlrenderer.pdf.DefaultPDFCreationListener;
import org.xhtmlrenderer.pdf.ITextRenderer;

/** Dates the file by its paper, not by the moment of printing. */
final class PaperDates extends DefaultPDFCreationListener {

    private final LocalDate date;

    PaperDates(LocalDate date) {
        this.date = date;
    }

    @Override
    public void onClose(ITextRenderer renderer) {
        GregorianCalendar midnight = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        midnight.clear();
        midnight.set(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
        PdfDate day = new PdfDate(midnight);
        PdfDictionary info = Objects.requireNonNull(renderer.getWriter(), "not writing").getInfo();
        info.put(PdfName.CREATIONDATE, day);
        info.put(PdfName.MODDATE, day);
    }
}
