package icequill.life.telling;

import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * That a customer was told of a visit to come.
 *
 * @param day on which he was told
 * @param begins when the visit was to begin, as he was told, by the shop's clock
 * @param ends when it was to end
 */
public record Telling(LocalDate day, Way way, LocalDateTime begins, LocalDateTime ends) {

    /** How he was told. */
    public enum Way {
        PAPER, TELEPHONE, MAIL
    }
}
