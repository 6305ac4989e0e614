package icequill.render.page;

/**
 * A record that templates read by the names of its components: texts, yes or no, words of a language, and lists of these or of
 * records like it. A component that is an empty {@link java.util.Optional} is not there.
 */
public interface Texts {}
