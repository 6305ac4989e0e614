package icequill.web.door;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/** Words that nobody can guess. */
public final class Chance {

    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 32;

    private Chance() {
    }

    /** Of 256 bits, in letters that an address may hold. */
    public static String word() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Whether two are the same, which takes as long whatever they have in common. */
    static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
