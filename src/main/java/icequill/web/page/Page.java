package icequill.web.page;

/** Answers one question. */
@FunctionalInterface
public interface Page {

    Answer answer(Asked asked);
}
