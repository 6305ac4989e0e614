package icequill.ledger.store;

import icequill.files.disk.Hash;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Seals a row: a hash of all that it says and of the seal before it, so that no earlier paper of a series, or row of the trail, can be
 * changed, added or taken out without every later seal showing it.
 */
public final class Seal {

    /** Stands before the first. */
    public static final String NONE = "0".repeat(64);

    private Seal() {
    }

    /** Each part goes in with its length before it, so that no two lists of parts read the same; an absent part has length -1. */
    public static String of(List<@Nullable String> parts) {
        MessageDigest digest = Hash.digest();
        for (String part : parts) {
            byte[] bytes = part == null ? new byte[0] : part.getBytes(StandardCharsets.UTF_8);
            digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(part == null ? -1 : bytes.length).array());
            digest.update(bytes);
        }
        return Hash.text(digest.digest());
    }
}
