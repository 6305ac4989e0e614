package icequill.render.pdf;

import java.io.IOException;
import java.util.Optional;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfReader;

/**
 * Which paper a PDF of ours is: kind and number as its title says, language, and date. Two prints of one paper have the same.
 *
 * @param date as the file has it
 */
public record Imprint(String title, String language, String date) {

    /** Empty for what is no PDF, or has no title or date. */
    public static Optional<Imprint> of(byte[] pdf) {
        try (PdfReader reader = new PdfReader(pdf)) {
            String title = reader.getInfo().get("Title");
            String date = reader.getInfo().get("CreationDate");
            PdfObject language = reader.getCatalog().get(PdfName.LANG);
            return title == null || date == null
                    ? Optional.empty()
                    : Optional.of(new Imprint(title, String.valueOf(language), date));
        } catch (IOException noPdf) {
            return Optional.empty();
        }
    }
}
