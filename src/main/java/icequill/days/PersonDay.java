package icequill.days;

/**
 * A day of a person.
 *
 * @param day its place among the days, from 0
 * @param person by place, from 0
 */
record PersonDay(int day, int person) {}
