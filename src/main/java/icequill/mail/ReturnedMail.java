package icequill.mail;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads a mail that came back, as one {@code .eml} file: a report of RFC 3464, or as far as it can be told, one in plain words. */
public final class ReturnedMail {

    /** A mail of ours with all that goes with it, and the report around it. */
    private static final long MOST_BYTES = 60_000_000;
    private static final Pattern ID = Pattern.compile("<([!-;=?-~]{1,200})>");

    private ReturnedMail() {
    }

    /**
     * Finds out which mail it was and what became of it. A file that is too large, damaged, or none about a mail of ours is a problem.
     *
     * @param isOurs whether a mail with this identifier, without its angle brackets, was sent from here
     */
    public static Validated<Returned> read(Path file, Predicate<String> isOurs) {
        Place place = Place.ofFile(file.toString());
        try {
            if (Files.size(file) > MOST_BYTES) {
                return Validated.invalid(new Problem(Code.TOO_LARGE, place, "the returned mail is too large",
                        "at most " + MOST_BYTES / 1_000_000 + " MB"));
            }
            MimeMessage mail = new MimeMessage(Session.getInstance(new Properties()),
                    new ByteArrayInputStream(Files.readAllBytes(file)));
            return ReturnedParts.of(mail).map(parts -> returned(parts, isOurs, place)).orElseGet(() -> damaged(place));
        } catch (IOException | MessagingException unreadable) {
            return damaged(place);
        }
    }

    private static Validated<Returned> returned(ReturnedParts parts, Predicate<String> isOurs, Place place) {
        Optional<String> ours = Stream.of(parts.original(), parts.words()).map(ID::matcher)
                .flatMap(found -> found.results().map(ReturnedMail::id)).filter(isOurs).findFirst();
        if (ours.isEmpty()) {
            return Validated
                    .invalid(new Problem(Code.UNKNOWN_NAME, place, "this is about no mail that was sent from here",
                            "a mail that came back, saved with its attachments"));
        }
        return Validated.valid(new Returned(ours.get(), DeliveryStatus.failed(parts.status())));
    }

    private static String id(MatchResult found) {
        return found.group(1);
    }

    private static Validated<Returned> damaged(Place place) {
        return Validated.invalid(new Problem(Code.UNREADABLE, place, "this is no mail that can be read",
                "one mail as an .eml file"));
    }
}
