package icequill.ledger.store;

/** The steps of issuing, in their order. A book tells them to whoever wants to know; tests halt the process there. */
public enum Step {
    NUMBER_TAKEN, PRINTED, FILE_WRITTEN, ROW_STORED, WORDS_STORED, FILE_FLUSHED, BEFORE_COMMIT, COMMITTED, MOVED
}
