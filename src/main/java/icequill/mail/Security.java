package icequill.mail;

/** How what is said to a mail server is kept from others. */
public enum Security {
    /** Begins in the clear and must go on encrypted (RFC 3207). */
    STARTTLS,
    /** Encrypted from the first byte (RFC 8314). */
    TLS,
    /** In the clear: only to this machine itself. */
    PLAIN
}
