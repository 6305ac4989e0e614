package icequill.office.asking;

/**
 * When somebody was there.
 *
 * @param on what the time was spent on, as a form has it
 */
record Hours(Moment arrived, Moment left, String on) {}
