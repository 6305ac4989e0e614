package icequill.request;

/**
 * What is wanted of a paper besides the PDF.
 *
 * @param html the same paper as a page, beside the PDF
 * @param xml a bill as UBL, beside the PDF
 * @param bare no files within the PDF, since some mail gateways hold back PDFs that carry files
 * @param mail that a mail about it is written
 */
public record Extras(boolean html, boolean xml, boolean bare, boolean mail) {

    /** The PDF alone, with its data within. */
    public static final Extras NONE = new Extras(false, false, false);

    /** The same without a mail. */
    public Extras(boolean html, boolean xml, boolean bare) {
        this(html, xml, bare, false);
    }
}
