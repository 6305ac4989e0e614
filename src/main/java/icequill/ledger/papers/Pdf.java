package icequill.ledger.papers;

import icequill.files.disk.Hash;

/** The bytes of a paper's file, which nobody can change. */
public final class Pdf {

    private final byte[] bytes;

    private Pdf(byte[] bytes) {
        this.bytes = bytes;
    }

    public static Pdf of(byte[] bytes) {
        return new Pdf(bytes.clone());
    }

    public byte[] bytes() {
        return bytes.clone();
    }

    /** SHA-256, in hexadecimal digits. */
    public String hash() {
        return Hash.of(bytes);
    }
}
