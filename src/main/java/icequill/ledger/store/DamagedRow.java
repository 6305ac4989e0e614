package icequill.ledger.store;

/** A row of the book holds what the program never writes. */
public final class DamagedRow extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public DamagedRow(String message) {
        super(message);
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
