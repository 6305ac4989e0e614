package icequill.render.pdf;

import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.openpdf.text.pdf.PRStream;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNameTree;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfReader;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.parser.PdfTextExtractor;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * What a paper's PDF says besides what is printed.
 *
 * @param marks what the shop's book says of the paper, by name
 * @param files that it carries, by name
 */
public record PrintedFile(Map<String, String> marks, Map<String, String> files) {

    /** The namespace of what the book says. */
    static final String BOOK = "urn:icequill:book:1#";

    public PrintedFile {
        marks = Map.copyOf(marks);
        files = Map.copyOf(files);
    }

    /** Reads a PDF, which may be anything. */
    public static Validated<PrintedFile> read(byte[] pdf) {
        try (PdfReader reader = new PdfReader(pdf)) {
            return Validated.valid(new PrintedFile(marks(reader), files(reader)));
        } catch (IOException | SAXException | RuntimeException unreadable) {
            return Validated
                    .invalid(new Problem(Code.UNREADABLE, Place.NOWHERE, "the PDF cannot be read: " + unreadable,
                            "a PDF as it was issued"));
        }
    }

    /**
     * The same file with another value for one of its marks, byte for byte as printing with that value gives it.
     *
     * @param value as long as the one before, both without characters that XML writes otherwise
     */
    public static byte[] remarked(byte[] pdf, String name, String before, String value) {
        String begin = "<" + Metadata.BOOK + ":" + name + ">";
        byte[] old = (begin + before + "<").getBytes(StandardCharsets.UTF_8);
        int at = FixedIds.last(pdf, old);
        Check.that(at > 0 && before.length() == value.length(), "no mark to change");
        byte[] other = pdf.clone();
        byte[] text = (begin + value + "<").getBytes(StandardCharsets.UTF_8);
        System.arraycopy(text, 0, other, at, text.length);
        FixedIds.identify(other);
        return other;
    }

    /** Whether a text without blanks is to be read on one of its pages; a PDF that cannot be read prints nothing. */
    public static boolean prints(byte[] pdf, String text) {
        try (PdfReader reader = new PdfReader(pdf)) {
            PdfTextExtractor texts = new PdfTextExtractor(reader);
            for (int page = 1; page <= reader.getNumberOfPages(); page++) {
                if (texts.getTextFromPage(page).replaceAll("\\s+", "").contains(text)) {
                    return true;
                }
            }
            return false;
        } catch (IOException | RuntimeException unreadable) {
            return false;
        }
    }

    private static Map<String, String> marks(PdfReader reader) throws IOException, SAXException {
        byte[] metadata = reader.getMetadata();
        Map<String, String> marks = new TreeMap<>();
        if (metadata != null) {
            NodeList all = parsed(metadata).getElementsByTagNameNS(BOOK, "*");
            for (int i = 0; i < all.getLength(); i++) {
                marks.put(all.item(i).getLocalName(), all.item(i).getTextContent());
            }
        }
        return marks;
    }

    private static Element parsed(byte[] xml) throws IOException, SAXException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml)).getDocumentElement();
        } catch (ParserConfigurationException unknown) {
            throw new IllegalStateException("every Java runtime has these features", unknown);
        }
    }

    private static Map<String, String> files(PdfReader reader) throws IOException {
        Map<String, String> files = new TreeMap<>();
        PdfDictionary names = reader.getCatalog().getAsDict(PdfName.NAMES);
        PdfDictionary embedded = names == null ? null : names.getAsDict(PdfName.EMBEDDEDFILES);
        if (embedded != null) {
            for (PdfObject each : PdfNameTree.readTree(embedded).values()) {
                if (PdfReader.getPdfObject(each) instanceof PdfDictionary file) {
                    add(file, files);
                }
            }
        }
        return files;
    }

    private static void add(PdfDictionary file, Map<String, String> files) throws IOException {
        PdfString name = file.getAsString(PdfName.F);
        PdfDictionary content = file.getAsDict(PdfName.EF);
        if (name != null && content != null
                && PdfReader.getPdfObject(content.get(PdfName.F)) instanceof PRStream stream) {
            files.put(name.toUnicodeString(), new String(PdfReader.getStreamBytes(stream), StandardCharsets.UTF_8));
        }
    }
}
