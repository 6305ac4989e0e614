package icequill.einvoice;

import com.helger.base.system.ENewLineMode;
import com.helger.diagnostics.error.list.ErrorList;
import com.helger.jaxb.GenericJAXBMarshaller;

/** Writes a document that its schema allows. */
final class XmlBytes {

    private XmlBytes() {
    }

    /**
     * UTF-8, indented, with the same ends of lines on every system, without a document type.
     *
     * @throws IllegalStateException naming what the schema does not allow
     */
    static <T> byte[] of(GenericJAXBMarshaller<T> marshaller, T document) {
        ErrorList errors = new ErrorList();
        byte[] bytes = marshaller.setFormattedOutput(true)
                .withXMLWriterSettings(settings -> settings.setNewLineMode(ENewLineMode.UNIX)).setCollectErrors(errors)
                .getAsBytes(document);
        if (bytes == null || errors.containsAtLeastOneError()) {
            throw new IllegalStateException("not by the schema: " + errors);
        }
        return bytes;
    }
}
