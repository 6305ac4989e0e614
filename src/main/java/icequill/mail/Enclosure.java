package icequill.mail;

import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.Objects;
import java.util.regex.Pattern;

/** A file that goes with a mail. */
public final class Enclosure {

    private static final int MOST_NAME = 150;
    /** What ends a name or leads elsewhere where it is stored. */
    private static final Pattern NO_NAME = Pattern.compile(".*[/\\\\:*?\"<>|].*|[. ].*|.*[. ]|");
    private static final Pattern MEDIA_TYPE = Pattern.compile("[a-z]+/[a-z0-9][a-z0-9.+-]*");

    private final String name;
    private final String mediaType;
    private final byte[] bytes;

    private Enclosure(String name, String mediaType, byte[] bytes) {
        this.name = name;
        this.mediaType = mediaType;
        this.bytes = bytes;
    }

    /**
     * A file by the name under which whoever gets it will store it.
     *
     * @param name in one line, at most 150 characters, none that leads to another folder
     * @param mediaType without parameters, for example {@code application/pdf}
     */
    public static Validated<Enclosure> of(String name, String mediaType, byte[] bytes, Place place) {
        Objects.requireNonNull(bytes, "bytes");
        Check.that(MEDIA_TYPE.matcher(mediaType).matches(), "not a media type: " + mediaType);
        return OneLine.is(name) && name.length() <= MOST_NAME && !NO_NAME.matcher(name).matches()
                ? Validated.valid(new Enclosure(name, mediaType, bytes.clone()))
                : Validated.invalid(new Problem(Code.NOT_ALLOWED, place,
                        "a file with this name cannot go with a mail",
                        "one line of at most " + MOST_NAME
                                + " characters, without / \\ : * ? \" < > |, and without a dot or a space at either end"));
    }

    public String name() {
        return name;
    }

    public String mediaType() {
        return mediaType;
    }

    public byte[] bytes() {
        return bytes.clone();
    }

    public int size() {
        return bytes.length;
    }

    @Override
    public String toString() {
        return name + " (" + mediaType + ", " + bytes.length + " bytes)";
    }
}
