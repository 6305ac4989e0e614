package icequill.pricer;

/**
 * A task that is done once more than a visit's scope says.
 *
 * @param machine by id
 * @param task by id
 */
public record ExtraWork(String machine, String task) {}
