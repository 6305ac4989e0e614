package icequill.life.telling;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * That a customer was told of a visit to come.
 *
 * @param day on which he was told
 * @param begins when the visit was to begin, as he was told, by the shop's clock
 * @param ends when it was to end
 * @param mail by which he was told, by id; empty where none of the book says so
 * @param cameBack whether that came back, so that he does not know
 */
public record Telling(LocalDate day, Way way, LocalDateTime begins, LocalDateTime ends, Optional<String> mail,
        boolean cameBack) {

    /** How he was told. */
    public enum Way {
        PAPER, TELEPHONE, MAIL
    }

    /** As somebody says who told him. */
    public Telling(LocalDate day, Way way, LocalDateTime begins, LocalDateTime ends) {
        this(day, way, begins, ends, Optional.empty(), false);
    }

    /** The same once that came back by which he was told. */
    public Telling returned() {
        return new Telling(day, way, begins, ends, mail, true);
    }
}
