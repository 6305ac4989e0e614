package icequill.papers;

import icequill.document.WorkSheet;

/**
 * The work sheet of a visit, or of one day of it.
 *
 * @param visit by id, with the number of the day but for the first
 */
public record NamedSheet(String visit, WorkSheet sheet) {}
