package icequill.mail;

import icequill.party.Language;
import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.List;

/**
 * What a mail says and what goes with it.
 *
 * @param subject in one line, at most 300 characters
 * @param text plain, without control characters but ends of lines and tabs, at most 100,000 characters
 * @param enclosures at most 50, and 30 MB of them
 */
public record MailContent(Language language, String subject, String text, List<Enclosure> enclosures) {

    private static final int MOST_SUBJECT = 300;
    private static final int MOST_TEXT = 100_000;
    private static final int MOST_ENCLOSURES = 50;
    private static final long MOST_BYTES = 30_000_000;

    public MailContent {
        enclosures = List.copyOf(enclosures);
        Check.that(faults(subject, text, enclosures, Place.NOWHERE).isEmpty(), "not the content of a mail");
    }

    /** What was put together of words and of what people wrote, with all that is wrong with it. */
    public static Validated<MailContent> of(Language language, String subject, String text, List<Enclosure> enclosures,
            Place place) {
        return faults(subject, text, enclosures, place).or(() -> new MailContent(language, subject, text, enclosures));
    }

    private static Problems faults(String subject, String text, List<Enclosure> enclosures, Place place) {
        Problems problems = new Problems();
        if (subject.isBlank() || subject.length() > MOST_SUBJECT || !OneLine.is(subject)) {
            problems.add(Code.NOT_ALLOWED, place,
                    "the subject of the mail is empty, too long, or holds a line break or another control character",
                    "one line of at most " + MOST_SUBJECT + " characters");
        }
        if (!isPlain(text)) {
            problems.add(Code.NOT_ALLOWED, place, "the text of the mail holds a control character",
                    "letters, signs and ends of lines");
        }
        if (text.length() > MOST_TEXT) {
            problems.add(Code.TOO_LARGE, place, "the text of the mail is too long",
                    "at most " + MOST_TEXT + " characters");
        }
        if (enclosures.size() > MOST_ENCLOSURES
                || enclosures.stream().mapToLong(Enclosure::size).sum() > MOST_BYTES) {
            problems.add(Code.TOO_LARGE, place, "more goes with the mail than mail servers take",
                    "at most " + MOST_ENCLOSURES + " files of " + MOST_BYTES / 1_000_000 + " MB together");
        }
        return problems;
    }

    private static boolean isPlain(String text) {
        return text.codePoints().noneMatch(point -> OneLine.breaks(point) && point != '\n' && point != '\r'
                && point != '\t');
    }
}
