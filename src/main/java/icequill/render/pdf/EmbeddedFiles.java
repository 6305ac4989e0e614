package icequill.render.pdf;

import icequill.document.Attachment;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDate;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfFileSpecification;
import org.openpdf.text.pdf.PdfIndirectReference;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfStream;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfWriter;

/** Puts files into a paper, and says what each is to it (ISO 19005-3, 6.8 and annex E). */
final class EmbeddedFiles {

    private EmbeddedFiles() {
    }

    /** @param date that the files bear, so that a reprint is the same */
    static void add(List<Attachment> attachments, PdfDate date, PdfWriter writer) throws IOException {
        PdfArray associated = new PdfArray();
        for (Attachment attachment : attachments) {
            PdfIndirectReference reference = add(attachment, date, writer);
            associated.add(reference);
        }
        if (!attachments.isEmpty()) {
            writer.getExtraCatalog().put(new PdfName("AF"), associated);
        }
    }

    private static PdfIndirectReference add(Attachment attachment, PdfDate date, PdfWriter writer) throws IOException {
        PdfDictionary parameters = new PdfDictionary();
        parameters.put(PdfName.MODDATE, date);
        byte[] content = attachment.text().getBytes(StandardCharsets.UTF_8);
        PdfFileSpecification file = PdfFileSpecification.fileEmbedded(writer, null, attachment.name(), content,
                attachment.mediaType(), parameters, PdfStream.BEST_COMPRESSION);
        file.put(PdfName.DESC, new PdfString(attachment.description(), PdfString.TEXT_UNICODE));
        file.put(new PdfName("AFRelationship"), new PdfName(switch (attachment.relation()) {
        case ALTERNATIVE -> "Alternative";
        case DATA -> "Data";
        }));
        writer.addFileAttachment(attachment.description(), file);
        return file.getReference();
    }
}
