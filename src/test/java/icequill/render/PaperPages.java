package icequill.render;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The text of a paper, page by page. */
public final class PaperPages {

    private PaperPages() {
    }

    /** All pages in the order in which they are read, without line breaks. */
    public static String flowing(Path pdf) throws IOException {
        return String.join(" ", of(pdf)).replaceAll("[\\s\u00a0]+", " ");
    }

    public static List<String> of(Path pdf) throws IOException {
        return of(Files.readAllBytes(pdf));
    }

    static List<String> of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
            return pages;
        }
    }
}
