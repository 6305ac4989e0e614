package icequill.days;

import java.time.LocalDate;

/**
 * A day on which somebody works.
 *
 * @param from minutes since midnight at which the working hours begin
 * @param until minutes since midnight at which they end
 */
public record WorkDay(LocalDate day, int from, int until) {}
