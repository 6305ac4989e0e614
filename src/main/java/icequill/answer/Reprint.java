package icequill.answer;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The file of a paper, byte for byte as it was issued.
 *
 * @param sha256 SHA-256, in hexadecimal digits
 * @param aside where the file lies now that stood in its place and was not the same
 */
public record Reprint(String number, Path file, String sha256, Way way, Optional<Path> aside) {

    /** How it came to lie there. */
    public enum Way {
        THERE, COPIED, PRINTED
    }

    /** As it is told. */
    public String words() {
        return switch (way) {
        case THERE -> "There";
        case COPIED -> "Copied from the book";
        case PRINTED -> "Printed again";
        } + ", byte for byte as issued (SHA-256 " + sha256 + ")";
    }
}
