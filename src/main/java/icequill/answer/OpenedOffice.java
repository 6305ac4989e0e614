package icequill.answer;

/**
 * The office in a browser, opened.
 *
 * @param link that lets one browser in, once
 */
public record OpenedOffice(String link) {}
