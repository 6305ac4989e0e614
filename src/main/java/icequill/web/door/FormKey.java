package icequill.web.door;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Base64;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The key that a form carries: it shows that the form came from a page of this session, and tells one sending of it from
 * another. A chance word, a dot, and its HMAC-SHA-256 (RFC 2104) under the secret of the session.
 *
 * @param word by which the book remembers what became of the form
 */
public record FormKey(String word) {

    private static final String HMAC = "HmacSHA256";
    private static final int CHANCE = 43;

    static FormKey fresh() {
        return new FormKey(Chance.word());
    }

    /** As a form carries it. */
    String sealed(String secret) {
        return word + "." + seal(word, secret);
    }

    /** The key of a form that was sent; empty where no page of the session can have carried it. */
    static Optional<FormKey> of(String sent, String secret) {
        int dot = sent.indexOf('.');
        return dot == CHANCE && Chance.same(sent.substring(dot + 1), seal(sent.substring(0, dot), secret))
                ? Optional.of(new FormKey(sent.substring(0, dot)))
                : Optional.empty();
    }

    private static String seal(String word, String secret) {
        try {
            Mac mac = Mac.getInstance(HMAC);
            mac.init(new SecretKeySpec(secret.getBytes(StandardCharsets.UTF_8), HMAC));
            return Base64.getUrlEncoder().withoutPadding()
                    .encodeToString(mac.doFinal(word.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("every Java has " + HMAC, missing);
        }
    }
}
