package icequill.days;

/**
 * Somebody who goes to a visit.
 *
 * @param minutes that he is at the site, from 1
 */
public record Going(Person person, int minutes) {}
