package icequill.ledger.store;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), written as 64 hexadecimal digits. */
public final class Hash {

    private Hash() {
    }

    public static String of(byte[] bytes) {
        return text(digest(), bytes);
    }

    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java runtime has SHA-256", never);
        }
    }

    private static String text(MessageDigest digest, byte[] bytes) {
        return HexFormat.of().formatHex(digest.digest(bytes));
    }
}
