package icequill.web.door;

import icequill.party.Language;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The links that open the office, each once, and the sessions that were opened. For many threads. */
public final class Door {

    /** Who guesses has no more tries; the person at the terminal has another link at a keystroke. */
    private static final int MOST_TRIES = 10;
    /** As many windows of several browsers as one person can have; the oldest go. */
    private static final int MOST_SESSIONS = 100;

    private final Map<String, Session> sessions = new LinkedHashMap<>();
    private @Nullable String link;
    private int tries;

    /** A new link's secret; the one before it opens nothing any more. */
    public synchronized String newLink() {
        String fresh = Chance.word();
        link = fresh;
        tries = 0;
        return fresh;
    }

    /** Opens a session to who has the link, once. */
    synchronized Optional<Session> open(String secret) {
        String awaited = link;
        if (awaited == null) {
            return Optional.empty();
        }
        if (!Chance.same(awaited, secret)) {
            tries++;
            link = tries < MOST_TRIES ? awaited : null;
            return Optional.empty();
        }
        link = null;
        Session session = Session.fresh();
        sessions.put(session.id(), session);
        if (sessions.size() > MOST_SESSIONS) {
            sessions.remove(sessions.keySet().iterator().next());
        }
        return Optional.of(session);
    }

    synchronized Optional<Session> session(String id) {
        return Optional.ofNullable(sessions.get(id));
    }

    /** From now on a session is in a language. */
    public synchronized void choose(Session session, Language language) {
        sessions.computeIfPresent(session.id(), (id, known) -> known.in(language));
    }
}
