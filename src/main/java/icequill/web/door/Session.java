package icequill.web.door;

import icequill.party.Language;
import java.util.Optional;

/**
 * One browser that came in by a link.
 *
 * @param id which its cookie holds
 * @param language that somebody chose in it; empty for what the browser asks for
 */
public record Session(String id, Optional<Language> language) {

    /** One that nobody has the cookie of yet. */
    public static Session fresh() {
        return new Session(Chance.word(), Optional.empty());
    }

    Session in(Language chosen) {
        return new Session(id, Optional.of(chosen));
    }

    /** A key for a new form, as the form carries it. */
    public String newFormKey() {
        return FormKey.fresh().sealed(id);
    }

    /** The key of a form that was sent; empty where no page of this session can have carried it. */
    public Optional<FormKey> sentKey(String sent) {
        return FormKey.of(sent, id);
    }
}
