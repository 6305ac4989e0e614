package icequill.ledger.entries;

import icequill.ledger.store.DamagedRow;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Something that happened to a quote, an agreement, a call, a job or a claim, or to a visit to come.
 *
 * @param kind of what lives, in capitals
 * @param id of it: a number of a paper, or a name of its own
 * @param position from 1, without a gap
 * @param event by its name
 * @param dated on which day it happened, which may be before it was noted
 * @param site by id; empty where none is known
 * @param said what the step says, by keys, and nothing of a person
 * @param personal names and words of people; empty too where the customer was forgotten since
 */
public record LifeStep(String kind, String id, int position, String event, LocalDate dated, Optional<String> site,
        Map<String, String> said, Map<String, String> personal) {

    /** Under which key a step says whose it is, by id, where more than its site tells it. */
    public static final String CUSTOMER = "customer";

    public LifeStep {
        said = Map.copyOf(said);
        personal = Map.copyOf(personal);
    }

    /**
     * Where steps lead one after the other.
     *
     * @param what lives, as somebody is told who has to look into a damaged book
     * @param next where a step leads from a state, or why it cannot
     */
    public static <S> S led(String what, S from, List<LifeStep> steps, BiFunction<S, LifeStep, Validated<S>> next) {
        S state = from;
        for (LifeStep step : steps) {
            state = next.apply(state, step).found().orElseThrow(() -> new DamagedRow(
                    what + " " + step.id() + ": its step " + step.position() + " cannot follow those before it"));
        }
        return state;
    }

    /** With whom it is forgotten besides the customer of its site. */
    Optional<String> customer() {
        return Optional.ofNullable(said.get(CUSTOMER));
    }

    /** What the step says under a key, of a person or not. */
    public Optional<String> text(String key) {
        return Optional.ofNullable(said.get(key)).or(() -> Optional.ofNullable(personal.get(key)));
    }
}
