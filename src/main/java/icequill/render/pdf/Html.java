package icequill.render.pdf;

/**
 * A paper as one HTML page that needs no other file.
 *
 * @param text well-formed, so that it is XHTML as well
 */
public record Html(String text) {}
