package icequill.days;

/**
 * Somebody who makes visits.
 *
 * @param grade by id, as the labor rates name it
 */
public record Person(String name, String grade) {}
