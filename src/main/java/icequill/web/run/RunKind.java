package icequill.web.run;

/** What takes long. */
public enum RunKind {
    /** Invoices of visits, one by one; what was issued before it was stopped stands. */
    ISSUE,
    /** Mails, one by one; what went out before it was stopped went out. */
    SEND,
    /** What mail servers sent back, read. */
    RETURNED,
    /** The whole book looked at. */
    AUDIT,
    /** Forms and lists looked at, to be taken in. */
    IMPORT_TRIAL,
    /** Forms and lists taken in, all of them or none. */
    IMPORT
}
