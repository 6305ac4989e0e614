package icequill.ledger.entries;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * Something that happened to a quote, an agreement, a call, a job or a claim.
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

    public LifeStep {
        said = Map.copyOf(said);
        personal = Map.copyOf(personal);
    }

    /** What the step says under a key, of a person or not. */
    public Optional<String> text(String key) {
        return Optional.ofNullable(said.get(key)).or(() -> Optional.ofNullable(personal.get(key)));
    }
}
