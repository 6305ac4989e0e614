package icequill.visits;

import icequill.party.Wording;
import icequill.work.Band;
import java.time.ZonedDateTime;

/**
 * How soon an agreement promises somebody.
 *
 * @param agreement its number
 * @param plan what it is on
 * @param band in which the call was made
 * @param hours within which somebody comes, in real time
 * @param by when that is
 */
public record PromisedResponse(String agreement, Wording plan, Band band, int hours, ZonedDateTime by) {}
