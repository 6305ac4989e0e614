package icequill.render;

/**
 * A paper as one HTML page that needs no other file but the shop's logo.
 *
 * @param text well-formed, so that it is XHTML as well
 */
public record Html(String text) {}
