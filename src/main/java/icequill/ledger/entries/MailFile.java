package icequill.ledger.entries;

import icequill.files.disk.Hash;
import icequill.ledger.store.DamagedRow;
import java.util.Base64;

/**
 * What goes along with a mail and is no paper of the book.
 *
 * @param mediaType such as {@code application/pdf}
 * @param hash SHA-256 of its bytes, in hexadecimal digits
 * @param content its bytes as base64 (RFC 4648)
 */
public record MailFile(String name, String mediaType, String hash, String content) {

    public static MailFile of(String name, String mediaType, byte[] bytes) {
        return new MailFile(name, mediaType, Hash.of(bytes), Base64.getEncoder().encodeToString(bytes));
    }

    /**
     * What it holds.
     *
     * @throws DamagedRow where that cannot be read
     */
    public byte[] bytes() {
        return DamagedRow.made("mail_file content", () -> Base64.getDecoder().decode(content));
    }

    /** Whether its bytes are still those of its hash. */
    boolean isWhole() {
        try {
            return Hash.of(bytes()).equals(hash);
        } catch (DamagedRow none) {
            return false;
        }
    }
}
