package icequill.files.disk;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), written as 64 hexadecimal digits. */
public final class Hash {

    private Hash() {
    }

    public static String of(byte[] bytes) {
        return text(digest().digest(bytes));
    }

    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java runtime has SHA-256", never);
        }
    }

    /** What a digest ends with, as it is written. */
    public static String text(byte[] hash) {
        return HexFormat.of().formatHex(hash);
    }
}
