package icequill.answer;

import java.time.LocalDate;

/**
 * The year that is looked at.
 *
 * @param until the day after the last
 * @param guessesOf the day whose guesses are taken
 */
public record YearSpan(LocalDate begins, LocalDate until, LocalDate guessesOf) {}
