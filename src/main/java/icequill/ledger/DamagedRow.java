package icequill.ledger;

/** A row of the book holds what the program never writes. */
final class DamagedRow extends RuntimeException {

    private static final long serialVersionUID = 1L;

    DamagedRow(String message) {
        super(message);
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
