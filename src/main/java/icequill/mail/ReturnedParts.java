package icequill.mail;

import jakarta.mail.BodyPart;
import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.internet.MimeUtility;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The parts of a mail that came back, each cut where no report is longer.
 *
 * @param status the fields of {@code message/delivery-status}; empty where there are none
 * @param original what it gives back of the mail itself: its head, or all of it
 * @param words everything else that is text
 */
record ReturnedParts(String status, String original, String words) {

    private static final int MOST = 200_000;
    private static final int MOST_PARTS = 100;
    private static final int DEEPEST = 8;

    /** Empty where the mail is damaged, or has more parts than any report. */
    static Optional<ReturnedParts> of(Part mail) throws MessagingException, IOException {
        Gathered gathered = new Gathered();
        boolean isWhole = gathered.take(mail, 0);
        return isWhole
                ? Optional.of(new ReturnedParts(gathered.status.toString(), gathered.original.toString(),
                        gathered.words.toString()))
                : Optional.empty();
    }

    private static final class Gathered {

        private final StringBuilder status = new StringBuilder();
        private final StringBuilder original = new StringBuilder();
        private final StringBuilder words = new StringBuilder();
        private int parts;

        boolean take(Part part, int depth) throws MessagingException, IOException {
            parts++;
            if (parts > MOST_PARTS || depth > DEEPEST) {
                return false;
            }
            if (part.isMimeType("multipart/*")) {
                return takeAll(new MimeMultipart(part.getDataHandler().getDataSource()), depth);
            }
            if (part.isMimeType("message/delivery-status") || part.isMimeType("message/global-delivery-status")) {
                append(status, part);
            } else if (part.isMimeType("message/*") || part.isMimeType("text/rfc822-headers")) {
                append(original, part);
            } else if (part.isMimeType("text/*")) {
                append(words, part);
            }
            return true;
        }

        private boolean takeAll(MimeMultipart several, int depth) throws MessagingException, IOException {
            for (int at = 0; at < several.getCount(); at++) {
                BodyPart part = several.getBodyPart(at);
                if (!take(part, depth + 1)) {
                    return false;
                }
            }
            return true;
        }

        private static void append(StringBuilder text, Part part) throws MessagingException, IOException {
            try (InputStream in = decoded(part)) {
                text.append(new String(in.readNBytes(MOST), StandardCharsets.UTF_8)).append('\n');
            }
        }

        /** The library takes reports for plain, as they were before RFC 6533. */
        private static InputStream decoded(Part part) throws MessagingException, IOException {
            return part instanceof MimeBodyPart body && body.getEncoding() != null
                    ? MimeUtility.decode(body.getRawInputStream(), body.getEncoding())
                    : part.getInputStream();
        }
    }
}
