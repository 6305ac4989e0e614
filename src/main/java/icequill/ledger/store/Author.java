package icequill.ledger.store;

/**
 * By whom the book is changed.
 *
 * @param name of the system's user
 * @param office its mark, where several share a book; else empty
 */
public record Author(String name, String office) {

    /** Whoever runs this program. */
    public static Author ofSystem(String office) {
        return new Author(System.getProperty("user.name", ""), office);
    }
}
