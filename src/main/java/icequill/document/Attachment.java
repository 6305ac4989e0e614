package icequill.document;

/**
 * A file that a paper carries within it, for the reader's machine.
 *
 * @param name of the file
 * @param mediaType such as {@code text/xml}
 * @param description for people, in the paper's language
 * @param text written as UTF-8
 */
public record Attachment(String name, String mediaType, String description, Relation relation, String text) {

    /** The name by which a hybrid invoice's data is found (Factur-X 1.0). */
    public static final String HYBRID = "factur-x.xml";

    /** Whether it makes the paper a hybrid invoice. */
    public boolean isHybrid() {
        return name.equals(HYBRID);
    }

    /** What a file is to the paper (ISO 19005-3, annex E). */
    public enum Relation {
        /** The same content in another form. */
        ALTERNATIVE,
        /** The data behind what is shown. */
        DATA
    }
}
