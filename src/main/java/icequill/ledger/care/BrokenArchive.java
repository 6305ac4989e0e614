package icequill.ledger.care;

/** A file is not what a backup is. */
final class BrokenArchive extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BrokenArchive(String message) {
        super(message);
    }
}
